export * from './judging.ts';
export * from './job-sheet.ts';
