import type { DrawingFoot } from './drawing-foot.ts';
import { addMark } from './layer-painter.ts';
import type { Sheet } from './sheet.ts';

/** Draws the line under the view: scale bar and drawn scale at the left, what found no room at the right. */
export class FootPainter {
  readonly #bar: SVGGElement;
  readonly #frame: SVGPathElement;
  readonly #filled: SVGPathElement;
  readonly #scale: SVGTextElement;
  readonly #notShown: SVGTextElement;
  #before: readonly [DrawingFoot, Sheet] | null = null;

  constructor(group: SVGGElement) {
    this.#bar = addMark(group, 'g');
    this.#frame = addMark(this.#bar, 'path', 'drawn-frame');
    this.#filled = addMark(this.#bar, 'path', 'drawn-filled');
    this.#scale = addMark(group, 'text', 'drawn-foot');
    this.#notShown = addMark(group, 'text', 'drawn-foot not-shown');
    this.#notShown.setAttribute('text-anchor', 'end');
  }

  /** A foot is mostly the very same while it says the same: then there is nothing to write. */
  paint(foot: DrawingFoot, sheet: Sheet): void {
    if (this.#before?.[0] === foot && this.#before[1] === sheet) return;
    this.#before = [foot, sheet];
    const { left, right } = sheet;
    const middle = (sheet.bottom + sheet.height) / 2 + 2;
    const apart = foot.stacked ? foot.size * 0.5 : 0;
    this.#bar.setAttribute('transform', `translate(${left} ${middle + apart - 4})`);
    this.#frame.setAttribute('d', foot.bar?.frame ?? '');
    this.#filled.setAttribute('d', foot.bar?.filled ?? '');
    const beside = left + (foot.bar?.width ?? 0) + 8;
    write(this.#scale, foot.bar === null ? '' : foot.scale, beside, middle + apart, foot.size);
    // The bar alone stays true at whatever size a picture of this is shown.
    this.#scale.dataset['inPicture'] = foot.bar?.length.text ?? '';
    write(this.#notShown, foot.notShown, right, middle - apart, foot.size);
  }
}

function write(node: SVGTextElement, words: string, x: number, y: number, size: number): void {
  node.textContent = words;
  node.setAttribute('x', String(x));
  node.setAttribute('y', String(y));
  node.setAttribute('dy', '0.2em');
  node.setAttribute('font-size', String(size));
}
