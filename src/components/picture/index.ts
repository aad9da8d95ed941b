export { save } from '../save/index.ts';
export { pngOf, svgOf, type PictureOptions } from './make.ts';
export type { Shot } from './shot.ts';
