/** What is special to the drawing of butt joints, fetched when the first one is drawn. */
export { buttDimensions } from './butt-dimensions.ts';
export { buttGrips } from './butt-grips.ts';
