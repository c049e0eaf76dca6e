/** What is special to butt joints: half of all the shape code, fetched when the first one is opened. */
export { buildButt } from '../joint/index.ts';
export { measureButt } from '../measure/index.ts';
