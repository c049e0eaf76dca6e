export type * from './skill.ts';
export type * from './question.ts';
export { ways } from './call-record.ts';
export type * from './call-record.ts';
