export * from './measurement.ts';
export { STEEL } from './area.ts';
export { measure } from './measure.ts';
export { measureButt } from './measure-butt.ts';
export { measureFillet } from './measure-fillet.ts';
export { sizeForRatio } from './size.ts';
export { unitOf } from './unit-of.ts';
export { measurementCatalogue } from './catalogue/catalogue.ts';
export type { CatalogueEntry, ParameterField } from './catalogue/entry.ts';
