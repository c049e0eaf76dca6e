export * from './joint.ts';
export * from './section.ts';
export * from './joint-error.ts';
export { build } from './build.ts';
export { defaultJoint } from './default-joint.ts';
export type { ParameterRange } from './parameter.ts';
export { jointFaults, parseJoint, type JointFault } from './parse-joint.ts';
export { parametersFor, parametersOf, spatterBounds } from './ranges.ts';
export { jointSchema } from './schema.ts';
