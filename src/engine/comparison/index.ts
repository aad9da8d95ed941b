export { changeFrom, type Change, type Comparing, type Measured } from './change.ts';
export { edgesOf } from './edges.ts';
export { writeRatio } from './ratio.ts';
