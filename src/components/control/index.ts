export { componentOf } from './component-of.ts';
export { Control, type Shown } from './control.ts';
export type { Dial } from './dial.ts';
export { SliderControl } from './slider-control.ts';
export { styles } from './styles.ts';
