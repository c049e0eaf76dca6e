export * from './joint.ts';
export * from './section.ts';
export * from './joint-error.ts';
export { build } from './build.ts';
