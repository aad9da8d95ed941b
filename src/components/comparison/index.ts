export { edgesOf } from '../../engine/comparison/index.ts';
export { changeOf } from './change-of.ts';
