import type { Component, Supply } from '../circuit/index.ts';
import type { DrawingStyle } from './drawing.ts';

/** A symbol along the x axis round the origin, `from` at the left, from −22 to 22. */
export interface Glyph {
  /** How far it reaches to either side of the axis. */
  readonly half: number;
  /** Polylines, x and y in turn. */
  readonly strokes: readonly (readonly number[])[];
  /** Centre and radius. */
  readonly circles: readonly (readonly [number, number, number])[];
  /** Filled polygons. */
  readonly filled: readonly (readonly number[])[];
  readonly letter: string;
  /** Whether it has a front and a back, so that it is turned round with its component. */
  readonly polar: boolean;
}

/** Half the length of every symbol. */
export const reach = 22;
const radius = 14;

const blank: Glyph = { half: 8, strokes: [], circles: [], filled: [], letter: '', polar: false };

const box = [-reach, -8, reach, -8, reach, 8, -reach, 8, -reach, -8];
const zigzag = [-22, 0, -18, -8, -11, 8, -4, -8, 4, 8, 11, -8, 18, 8, 22, 0];
const leads = (gap: number): number[][] => [
  [-reach, 0, -gap, 0],
  [gap, 0, reach, 0],
];
const circle: Glyph = { ...blank, half: radius, strokes: leads(radius), circles: [[0, 0, radius]] };
const slant = radius * Math.SQRT1_2;

/** A cell's plates: the long thin one is positive. */
const long = (x: number): number[] => [x, -14, x, 14];
const short = (x: number): number[] => [x - 2, -7, x + 2, -7, x + 2, 7, x - 2, 7];

function battery(cells: number): Glyph {
  const outer = cells === 1 ? 4 : cells === 2 ? 12 : 16;
  const gap = outer - (cells === 1 ? -4 : 8);
  const between = cells > 2 ? [-6, -2, 2, 6].map((x) => [x - 1, 0, x + 1, 0]) : [];
  const strokes = [...leads(outer), long(-outer), ...between];
  const pair = cells === 1 ? [] : [long(gap)];
  const plates = cells === 1 ? [short(outer)] : [short(-gap), short(outer)];
  return { ...blank, half: 14, strokes: [...strokes, ...pair], filled: plates, polar: true };
}

/** The cells of a supply: as written, else one up to 2 V (common practice), else a battery of more. */
export function cellsOf({ cells, emf }: Supply): number {
  return cells ?? (emf.value.compare(2) > 0 ? 3 : 1);
}

/** IEC 60617 symbols, as schools draw them; with 'ansi' the resistor is the zigzag of IEEE 315. */
export function glyphOf(component: Component, symbols: DrawingStyle['symbols']): Glyph {
  switch (component.kind) {
    case 'supply':
      return battery(cellsOf(component));
    case 'resistor': {
      const fixed = { ...blank, strokes: [symbols === 'ansi' ? zigzag : box] };
      if (!component.range) return fixed;
      const strokes = [...fixed.strokes, [-15, 15, 13, -13]];
      return { ...fixed, half: 16, strokes, filled: [[16, -16, 13, -7.5, 7.5, -13]] };
    }
    case 'lamp': {
      const cross = [
        [-slant, -slant, slant, slant],
        [-slant, slant, slant, -slant],
      ];
      return { ...circle, strokes: [...circle.strokes, ...cross] };
    }
    case 'switch': {
      const blade = component.closed ? [-9, 0, 9, 0] : [-9.5, -1.5, 11, -11];
      return {
        ...blank,
        half: 12,
        strokes: [...leads(15), blade],
        circles: [
          [-12, 0, 3],
          [12, 0, 3],
        ],
      };
    }
    case 'ammeter':
      return { ...circle, letter: 'A' };
    case 'voltmeter':
      return { ...circle, letter: 'V' };
    case 'wire':
      return { ...blank, half: 4, strokes: [[-reach, 0, reach, 0]] };
  }
}
