import { writeDocument } from '../../state/bench-document.ts';
import type { BenchSession } from '../../state/bench.svelte.ts';
import { titleOf } from '../../state/summary.ts';
import type { Wording } from '../wording.svelte.ts';

/** What this bench is called at the head of its sheet, in the reader's words. */
export const benchTitle = (bench: BenchSession, wording: Wording): string =>
  wording.brief(titleOf(bench.measurements));

/** A file name from the bench's title: small letters, figures and hyphens. */
export function fileName(title: string, end: string): string {
  const plain = title
    .toLowerCase()
    .replace(/[^a-z0-9.]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return `${plain}.${end}`;
}

/** Hands the whole bench to the person as a file that Share opens again. */
export function saveBench(bench: BenchSession, wording: Wording): void {
  const content = new Blob([writeDocument(bench.document)], { type: 'application/json' });
  saveFile(fileName(benchTitle(bench, wording), 'json'), content);
}

/** Hands a text or picture to the person as a file of that name. */
export function saveFile(name: string, content: Blob): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  // The browser has to have begun reading before the address is withdrawn.
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
