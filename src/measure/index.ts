export * from './measurement.ts';
export { measure } from './measure.ts';
export { sizeForRatio, type SizeForRatio, type SizeTriangle } from './size.ts';
export { measurementCatalogue } from './catalogue/catalogue.ts';
export type { CatalogueEntry, ParameterField } from './catalogue/entry.ts';
