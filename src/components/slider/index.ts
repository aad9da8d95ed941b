export type { Dial } from './dial.ts';
export { SliderControl } from './slider-control.ts';
export { styles } from './styles.ts';
