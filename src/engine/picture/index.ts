export { fonts, halo, inks, type Ink, type PictureStyle } from './ink.ts';
export { drawingToSVG, ribbonsOf, type Picture } from './svg.ts';
