export { axisOver, both, type Axis, type Reach } from './axis.ts';
export { decadesOver } from './decades.ts';
export { written } from './written.ts';
