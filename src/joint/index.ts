export * from './joint.ts';
export * from './section.ts';
export * from './joint-error.ts';
