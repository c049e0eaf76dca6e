import type { Layer } from './layer-painter.ts';
import type { SectionBody } from './section-body.ts';

type BodyLayer = Layer<SectionBody>;

/** Hatched base metal: the ground that the rest is drawn on. */
export const plateLayers: readonly BodyLayer[] = [
  { look: 'drawn-plate', hatch: 1, path: ({ plates }) => plates[0] },
  { look: 'drawn-plate', hatch: 2, path: ({ plates }) => plates[1] },
  { look: 'drawn-plate', hatch: 3, path: ({ backing }) => backing },
];

export const weldLayer: BodyLayer = { look: 'drawn-weld', path: ({ weld }) => weld };
export const fusionLayer: BodyLayer = { look: 'drawn-narrow', path: ({ fusion }) => fusion };

/** The lines of the metal itself: breaks narrow, outline wide. */
export const outlineLayers: readonly BodyLayer[] = [
  { look: 'drawn-narrow', path: ({ breaks }) => breaks },
  { look: 'drawn-outline', path: ({ outline }) => outline },
];

/** A section and nothing more. */
export const bodyLayers: readonly BodyLayer[] = [...plateLayers, weldLayer, ...outlineLayers];

/** A section with the line along which weld and base metal are fused. */
export const fusedBodyLayers: readonly BodyLayer[] = [
  ...plateLayers,
  weldLayer,
  fusionLayer,
  ...outlineLayers,
];
