import type { Shelf } from './shelf.ts';

const NAME = 'toeline.lessons';

/** Which tasks of which lessons a person has got right; kept on the shelf, harmless to lose. */
export class LessonProgress {
  readonly #shelf: Shelf;
  #done: ReadonlySet<string>;

  constructor(shelf: Shelf) {
    this.#shelf = shelf;
    this.#done = $state.raw(new Set(readDone(shelf.read(NAME))));
  }

  isDone(lesson: string, task: string): boolean {
    return this.#done.has(`${lesson}/${task}`);
  }

  markDone(lesson: string, task: string): void {
    if (this.isDone(lesson, task)) return;
    // another tab may have got some right meanwhile
    const there = readDone(this.#shelf.read(NAME));
    this.#done = new Set([...there, ...this.#done, `${lesson}/${task}`]);
    this.#shelf.write(NAME, JSON.stringify([...this.#done]));
  }
}

function readDone(text: string | null): readonly string[] {
  if (text === null) return [];
  try {
    const value: unknown = JSON.parse(text);
    return Array.isArray(value) ? value.filter((entry) => typeof entry === 'string') : [];
  } catch {
    return [];
  }
}
