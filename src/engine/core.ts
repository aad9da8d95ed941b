export * from './quantity/index.ts';
export * from './words/index.ts';
export * from './circuit/index.ts';
export * from './topology/index.ts';
export * from './notation/index.ts';
export * from './solve/index.ts';
export * from './rules/index.ts';
export * from './schematic/index.ts';
export { needsMore, prepare } from './prepare.ts';
