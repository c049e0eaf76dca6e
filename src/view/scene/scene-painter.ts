import { bodyLayers } from './body-layers.ts';
import { DimensionPainter } from './dimension-painter.ts';
import { FootPainter } from './foot-painter.ts';
import { addMark, LayerPainter } from './layer-painter.ts';
import type { Scene } from './scene.ts';
import { sceneLayers } from './scene-layers.ts';
import type { SectionBody } from './section-body.ts';
import type { TrueSize } from './true-size.ts';
import { written } from './written.ts';

/** Draws a composed scene into a group of the page, and at the next one writes what has changed. */
export class ScenePainter {
  readonly #layers: LayerPainter<Scene>;
  readonly #dimensions: DimensionPainter;
  readonly #picture: PicturePainter;
  readonly #foot: FootPainter;

  /** `id` is what the ids of its hatch patterns begin with: `-h` of the drawing, `-t` at true size. */
  constructor(group: SVGGElement, id: string) {
    this.#layers = new LayerPainter(group, sceneLayers, `${id}-h`);
    this.#dimensions = new DimensionPainter(addMark(group, 'g'));
    this.#picture = new PicturePainter(addMark(group, 'g', 'drawn-true-size'), `${id}-t`);
    this.#foot = new FootPainter(addMark(group, 'g'));
  }

  /** With a caption, of the joint at true size, that and the foot are drawn too. */
  paint(scene: Scene, caption: string | null): void {
    this.#layers.paint(scene);
    this.#dimensions.paint(scene.dimensions);
    if (caption === null) return;
    this.#picture.paint(scene.trueSize, caption);
    this.#foot.paint(scene.foot, scene.sheet);
  }
}

const NO_BODY: SectionBody = {
  plates: ['', ''],
  backing: '',
  weld: '',
  outline: '',
  fusion: '',
  breaks: '',
};

/** The whole joint at life size, so that the eye learns scale while it reads detail. */
class PicturePainter {
  readonly #layers: LayerPainter<SectionBody>;
  readonly #caption: SVGTextElement;
  #written = '';
  #place = '';

  constructor(group: SVGGElement, hatches: string) {
    this.#layers = new LayerPainter(group, bodyLayers, hatches);
    this.#caption = addMark(group, 'text', 'drawn-caption');
  }

  paint(picture: TrueSize | null, caption: string): void {
    this.#layers.paint(picture?.body ?? NO_BODY);
    const words = picture === null ? '' : caption;
    if (words !== this.#written) this.#caption.textContent = this.#written = words;
    if (picture === null) return;
    // A transform moves for less than a place of its own: its glyphs aren't laid out anew.
    const place = `translate(${written(picture.caption.x)} ${written(picture.caption.y)})`;
    if (place !== this.#place) this.#caption.setAttribute('transform', (this.#place = place));
  }
}
