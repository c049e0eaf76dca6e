/** What is special to the drawing of butt joints, fetched when the first one is drawn. */
export { buttBand } from './butt-band.ts';
export { buttDimensions } from './butt-dimensions.ts';
export { buttGrips } from './butt-grips.ts';
