import { fusionLayer, outlineLayers, plateLayers, weldLayer } from './body-layers.ts';
import type { Tone } from './dimension-request.ts';
import type { Layer } from './layer-painter.ts';
import type { Scene } from './scene.ts';
import type { SectionBody } from './section-body.ts';

const ofBody = ({ path, ...look }: Layer<SectionBody>): Layer<Scene> => ({
  ...look,
  path: ({ body }) => path(body),
});

const tones: readonly Tone[] = ['plain', 'refer', 'reject'];

/** A drawing from the ground up, its dimensions' own marks left out: metal, band, construction, outline, extension lines. */
export const sceneLayers: readonly Layer<Scene>[] = [
  ...plateLayers.map(ofBody),
  { look: 'drawn-clear-lines', path: ({ clearLines }) => clearLines },
  { look: 'drawn-clear', path: ({ clearBoxes }) => clearBoxes },
  ofBody(weldLayer),
  { look: 'drawn-band-inside', path: ({ band }) => band.inside },
  { look: 'drawn-band-outside', path: ({ band }) => band.outside },
  { look: 'drawn-hidden', path: ({ construction }) => construction.hidden },
  { look: 'drawn-held', path: ({ held }) => held },
  { look: fusionLayer.look, path: ({ body, showsFusion }) => (showsFusion ? body.fusion : '') },
  ...outlineLayers.map(ofBody),
  { look: 'drawn-limits', path: ({ band }) => band.limits },
  { look: 'drawn-surface', path: ({ construction }) => construction.surfaces },
  { look: 'drawn-narrow', path: ({ construction }) => construction.narrow },
  ...tones.map((tone): Layer<Scene> => ({
    look: `drawn-line second ${tone}`,
    path: ({ extensions }) => extensions[tone],
  })),
  ...tones.map((tone): Layer<Scene> => ({
    look: `drawn-line second ${tone} lit`,
    path: ({ litExtensions }) => litExtensions[tone],
  })),
  { look: 'drawn-cut', path: ({ cuts }) => cuts },
];
