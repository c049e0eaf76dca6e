import type { DrawnDimension } from './drawn-dimension.ts';
import { addMark, newMark } from './layer-painter.ts';

/**
 * Draws dimensions into a group and keeps them: each has nodes of its own for as long as it is drawn,
 * and of these only what has changed is written.
 */
export class DimensionPainter {
  readonly #group: SVGGElement;
  /** from the lowest to the topmost */
  #drawn: readonly Marks[] = [];

  constructor(group: SVGGElement) {
    this.#group = group;
  }

  /** Draws these dimensions, each on top of those before it, and no others. */
  paint(dimensions: readonly DrawnDimension[]): void {
    const marks = this.#drawn;
    const sameOnes =
      dimensions.length === marks.length &&
      dimensions.every(({ key }, place) => key === marks[place]?.key);
    if (!sameOnes) this.#arrange(dimensions);
    dimensions.forEach((one, place) => this.#drawn[place]?.draw(one));
  }

  /** Lets go of what is no longer drawn, makes what is new, and puts all in order. */
  #arrange(dimensions: readonly DrawnDimension[]): void {
    const before = new Map(this.#drawn.map((marks) => [marks.key, marks]));
    const drawn = dimensions.map(({ key }) => before.get(key) ?? new Marks(key));
    for (const marks of this.#drawn) if (!drawn.includes(marks)) marks.node.remove();
    let below: Element | null = null;
    for (const { node } of drawn) {
      const next: Element | null =
        below === null ? this.#group.firstElementChild : below.nextElementSibling;
      if (next !== node) this.#group.insertBefore(node, next);
      below = node;
    }
    this.#drawn = drawn;
  }
}

/** The nodes of one dimension. */
class Marks {
  readonly key: string;
  readonly node = newMark('g');
  readonly #line: SVGPathElement;
  readonly #origin: SVGPathElement;
  readonly #heads: SVGPathElement;
  readonly #place: SVGGElement;
  readonly #text: SVGTextElement;
  readonly #name: Text;
  readonly #value: Text;
  #before: DrawnDimension | null = null;

  constructor(key: string) {
    this.key = key;
    this.#line = addMark(this.node, 'path', 'drawn-line');
    this.#origin = addMark(this.node, 'path', 'drawn-origin');
    this.#heads = addMark(this.node, 'path', 'drawn-heads');
    // A group moves for less than a text does: its glyphs aren't laid out anew.
    this.#place = addMark(this.node, 'g');
    this.#text = addMark(this.#place, 'text', 'drawn-text');
    this.#name = addWords(this.#text, 'drawn-name');
    this.#value = addWords(this.#text, 'drawn-value');
  }

  draw(one: DrawnDimension): void {
    const before = this.#before;
    this.#before = one;
    if (before?.tone !== one.tone || before.lit !== one.lit)
      this.node.setAttribute('class', `drawn-dimension ${one.tone}${one.lit ? ' lit' : ''}`);
    if (before?.line !== one.line) this.#line.setAttribute('d', one.line);
    if (before?.origin !== one.origin) this.#origin.setAttribute('d', one.origin);
    if (before?.heads !== one.heads) this.#heads.setAttribute('d', one.heads);
    if (before?.place !== one.place) this.#place.setAttribute('transform', one.place);
    if (before?.ground !== one.ground || before.caption !== one.caption)
      this.#text.setAttribute('class', `drawn-text ${one.ground}${one.caption ? ' caption' : ''}`);
    if (before?.anchor !== one.anchor) this.#text.setAttribute('text-anchor', one.anchor);
    if (before?.name !== one.name) this.#name.data = one.name;
    if (before?.value !== one.value) this.#value.data = one.value;
  }
}

/** A run of words within a text. */
function addWords(text: SVGTextElement, look: string): Text {
  return addMark(text, 'tspan', look).appendChild(document.createTextNode(''));
}
