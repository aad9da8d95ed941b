export type { Dial } from './dial.ts';
export { rows } from './rows.ts';
export { SliderControl } from './slider-control.ts';
export { styles } from './styles.ts';
