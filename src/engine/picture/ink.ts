/** The colours of a picture; '' leaves out what has that colour. */
export interface Ink {
  readonly line: string;
  readonly paper: string;
  /** The ribbons. */
  readonly current: string;
  /** The glow of lamps. */
  readonly light: string;
}

/** In whose colours a picture is. */
export type PictureStyle = 'page' | 'light' | 'print';

/**
 * `page` takes the colour of the text round it, on its ground; `light` is for slides; `print` is black on white, its ribbons of a
 * grey that a copier keeps (common practice: between a quarter and a half of black), and no glow.
 */
export const inks: Readonly<Record<PictureStyle, Ink>> = {
  page: { line: 'currentColor', paper: '', current: '#ae5494', light: '' },
  light: { line: '#1d1b1c', paper: '#fffefb', current: '#a8519c', light: '#ffcf4a' },
  print: { line: '#000', paper: '#fff', current: '#b3b3b3', light: '' },
};

/** The fonts of a picture: those of whoever looks at it. */
export const fonts = 'system-ui, sans-serif';

/** The discs of a lamp's glow, which add up: radius in pixels, and how much of the light is in it. */
export const halo: readonly { readonly radius: number; readonly share: number }[] = [
  { radius: 24, share: 0.15 },
  { radius: 20, share: 0.25 },
  { radius: 16, share: 0.35 },
  { radius: 12, share: 0.5 },
];
