export { axisOver, both, type Axis, type Reach } from './axis.ts';
export { written } from './written.ts';
