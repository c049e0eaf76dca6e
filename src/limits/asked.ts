import type { Toleranced } from './job-sheet.ts';

/** What is asked of a dimension of the preparation: what is drawn, or the WPS's where the drawing says nothing of its own. */
export const askedOf = <T>({ nominal, drawn }: Toleranced<T>): T | null => drawn ?? nominal;
