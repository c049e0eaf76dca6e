import type { BenchDocument } from './bench-document.ts';
import type { BenchSession } from './bench.svelte.ts';
import { readDocument } from './read-document.ts';

/** Files named NN-kind-what-it-shows.json: place in the list, kind of joint, id. */
const files = import.meta.glob<string>('./ready-sections/*.json', {
  query: '?raw',
  import: 'default',
});

/** A section to start from, named for what it shows; the name is the message `bench_ready_<id>`. */
export interface ReadySection {
  readonly id: string;
  readonly kind: 'fillet' | 'butt';
  readonly name: string;
  readonly open: () => Promise<BenchDocument>;
}

/** Every ready section, in sheet order. Each is fetched when it is asked for. */
export const readySections: readonly ReadySection[] = Object.entries(files)
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .map(([path, load]) => {
    const [, kind, id = ''] = /\/\d+-(fillet|butt)-([^/]*)\.json$/.exec(path) ?? [];
    return {
      id,
      kind: kind === 'butt' ? 'butt' : 'fillet',
      name: `bench_ready_${id.replaceAll('-', '_')}`,
      open: () => read(path, load),
    };
  });

/** Puts a ready section on the bench; what is held stays, so that the two can be compared. */
export async function openReady(bench: BenchSession, ready: ReadySection): Promise<void> {
  const document = await ready.open();
  bench.load({ ...document, held: bench.held });
}

async function read(path: string, load: () => Promise<string>): Promise<BenchDocument> {
  const found = await readDocument(await load());
  if (!found.ok) throw new Error(`${path}: ${found.why.key}`);
  return found.document;
}
