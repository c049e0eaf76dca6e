export * from './measurement.ts';
