/** One path of a drawing: how it looks, and where it runs on the thing that is drawn. */
export interface Layer<Drawn> {
  /** its class, styled in `style/drawing.css` where it isn't filled with a hatch alone */
  readonly look: string;
  /** which of the drawing's hatches fills it */
  readonly hatch?: 1 | 2 | 3;
  readonly path: (drawn: Drawn) => string;
}

/**
 * Draws layers into a group, each over those before it, and keeps them: of a later drawing only what
 * has changed is written. By hand and not by a template, for at every move of a hand the drawing is
 * most of what the page does, and a template's blocks and effects cost more than what they write.
 */
export class LayerPainter<Drawn> {
  readonly #layers: readonly Layer<Drawn>[];
  readonly #paths: readonly SVGPathElement[];
  readonly #written: string[];

  /** `hatches` is what the ids of the hatch patterns begin with. */
  constructor(group: SVGGElement, layers: readonly Layer<Drawn>[], hatches: string) {
    this.#layers = layers;
    this.#written = layers.map(() => '');
    this.#paths = layers.map(({ look, hatch }) => {
      const path = addMark(group, 'path', look);
      if (hatch !== undefined) path.setAttribute('fill', `url(#${hatches}-${hatch})`);
      return path;
    });
  }

  paint(drawn: Drawn): void {
    this.#layers.forEach((layer, place) => {
      const path = layer.path(drawn);
      if (path === this.#written[place]) return;
      this.#written[place] = path;
      this.#paths[place]?.setAttribute('d', path);
    });
  }
}

type MarkName = 'g' | 'path' | 'text' | 'tspan';

/** A new mark of a drawing, on top of what is in `parent` already. */
export function addMark<Name extends MarkName>(
  parent: SVGElement,
  name: Name,
  look = '',
): SVGElementTagNameMap[Name] {
  return parent.appendChild(newMark(name, look));
}

/** A new mark that stands nowhere yet. */
export function newMark<Name extends MarkName>(name: Name, look = ''): SVGElementTagNameMap[Name] {
  const mark = document.createElementNS('http://www.w3.org/2000/svg', name);
  if (look !== '') mark.setAttribute('class', look);
  return mark;
}
