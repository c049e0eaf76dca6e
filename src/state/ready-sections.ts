import type { BenchDocument } from './bench-document.ts';
import { readDocument } from './read-document.ts';

/** Files named NN-what-it-shows.json: the number is the place in the list, the rest the id. */
const files = import.meta.glob<string>('./ready-sections/*.json', {
  query: '?raw',
  import: 'default',
});

/** A section to start from, named for what it shows; the name is the message `bench_ready_<id>`. */
export interface ReadySection {
  readonly id: string;
  readonly name: string;
  readonly open: () => Promise<BenchDocument>;
}

/** Every ready section, in sheet order. Each is fetched when it is asked for. */
export const readySections: readonly ReadySection[] = Object.entries(files)
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .map(([path, load]) => {
    const id = path.replace(/^.*\/\d+-(.*)\.json$/, '$1');
    return { id, name: `bench_ready_${id.replaceAll('-', '_')}`, open: () => read(path, load) };
  });

async function read(path: string, load: () => Promise<string>): Promise<BenchDocument> {
  const found = await readDocument(await load());
  if (!found.ok) throw new Error(`${path}: ${found.why.key}`);
  return found.document;
}
