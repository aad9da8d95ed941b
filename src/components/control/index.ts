export { componentOf } from './component-of.ts';
export { Control, type Shown } from './control.ts';
