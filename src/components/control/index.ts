export { componentOf } from './component-of.ts';
export { Control, type Subject, type Shown } from './control.ts';
