import { drawingToSVG, inks, type PictureStyle } from '../../engine/picture/index.ts';
import { paint } from './paint.ts';
import { asShown, type Shot } from './shot.ts';

/** How a picture is made. */
export interface PictureOptions {
  /** `page` (the colours of the text round it, the default of an SVG), `light` (for slides, the default of a PNG) or `print` (black, white and grey, with lines to write on for what is not told). */
  readonly style?: PictureStyle;
  /** Pixels of a PNG for one of the drawing; 3 where it is not said. */
  readonly scale?: number;
}

/** The longest side of a canvas that every browser fills, in pixels (a limit of browsers; from memory). */
const longest = 8192;

/** A board as SVG text. */
export function svgOf(shot: Shot, { style = 'page' }: PictureOptions): string {
  return drawingToSVG(asShown(shot, style === 'print'), { ...shot.picture, ink: inks[style] });
}

/** A board as a PNG; undefined where the browser makes none. */
export async function pngOf(
  shot: Shot,
  { style = 'light', scale = 3 }: PictureOptions,
): Promise<Blob | undefined> {
  const drawing = asShown(shot, style === 'print');
  const { width, height } = drawing;
  const pixels = Math.min(scale, longest / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.ceil(width * pixels);
  canvas.height = Math.ceil(height * pixels);
  const pen = canvas.getContext('2d');
  if (!pen) return undefined;
  pen.scale(pixels, pixels);
  paint(pen, drawing, shot.picture, inks[style === 'page' ? 'light' : style]);
  return new Promise((done) => {
    canvas.toBlob((blob) => {
      done(blob ?? undefined);
    });
  });
}
