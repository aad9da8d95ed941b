import type { Catalogue } from '../../../src/engine/index.ts';

/** What the sentences of a board's buttons, and of what is written into its drawing, are tried with. */
export const boardSamples: Pick<
  { readonly [Code in keyof Catalogue]: readonly Catalogue[Code][] },
  'button' | 'not to be written' | 'written'
> = {
  button: (
    [
      'reset',
      'undo',
      'redo',
      'hold',
      'release',
      'reveal',
      'copy',
      'link',
      'text',
      'png',
      'print',
      'svg',
    ] as const
  ).map((does) => ({ does })),
  'not to be written': ([undefined, 'changeover', 'potentiometer'] as const).map((half) => ({
    found: 'I_R9',
    like: 'R1',
    half,
  })),
  written: (['reading', 'symbol', 'blank'] as const).map((shows) => ({
    quantities: [{ called: 'p.d. across R1', shows, reading: '6.00 volts' }],
  })),
};
