/** The sets that the page did not open with come with the rest of them. */
export { limitSets } from '../limits/index.ts';
