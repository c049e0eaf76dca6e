export * from './quantity.ts';
export * from './message.ts';
