import type { JobSheet } from '../limits/index.ts';

/** What of a sheet has a say in what can be asked on it, as one text: what a job is called has none. */
export const sheetKey = (sheet: JobSheet): string =>
  JSON.stringify({ ...sheet, ...names, symbol: null });

const names = { job: '', weld: '', wps: '', drawing: '', code: '', material: '', process: '' };
