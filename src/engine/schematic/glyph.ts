import type { Component, Range, Supply } from '../circuit/index.ts';
import type { DrawingStyle, Turn } from './drawing.ts';

/** A symbol along the x axis round the origin, `from` at the left, as path data of absolute pairs x,y and relative arcs. */
export interface Glyph {
  /** How far it reaches to either side of the axis. */
  readonly half: number;
  readonly lines: string;
  /** Filled polygons; '' if none. */
  readonly filled: string;
  readonly letter: string;
  /** Whether it has a front and a back, so that it is turned round with its component. */
  readonly polar: boolean;
  /** The open ends of the wires on both sides of what is taken out; '' if they are not open. */
  readonly ends: string;
}

/** A glyph without the leads that join it to the ends of its room. */
interface Body extends Omit<Glyph, 'ends'> {
  /** How far from the middle its leads begin. */
  readonly lead: number;
}

/** Half the length of every symbol. */
export const reach = 22;

const body = (half: number, lead: number, lines: string, letter = '', filled = '', polar = false): Body => ({
  half,
  lead,
  lines,
  filled,
  letter,
  polar,
});

const ring = (x: number, r: number): string =>
  `M${x - r},0a${r} ${r} 0 0 1 ${2 * r},0a${r} ${r} 0 0 1 ${-2 * r},0`;
const circle = ring(0, 14);

/** A cell's plates: the long thin one is positive. */
const long = (x: number): string => `M${x},-14L${x},14`;
const short = (x: number): string => `M${x - 2},-7L${x + 2},-7L${x + 2},7L${x - 2},7Z`;

function battery(cells: number): Body {
  if (cells === 1) return body(14, 4, long(-4), '', short(4), true);
  const outer = cells === 2 ? 12 : 16;
  const inner = outer - 8;
  const between = cells === 2 ? '' : [-7, -3, 1, 5].map((x) => `M${x},0L${x + 2},0`).join('');
  return body(14, outer, long(-outer) + long(inner) + between, '', short(-inner) + short(outer), true);
}

/** The same with the arrow through it that says that it can be varied. */
function varied(fixed: Body, range: Range | undefined): Body {
  if (!range) return fixed;
  const { lines, filled } = fixed;
  return {
    ...fixed,
    half: 16,
    lines: `${lines}M-15,15L13,-13`,
    filled: `${filled}M16,-16L13,-7.5L7.5,-13Z`,
  };
}

/** The cells of a supply: as written, else one up to 2 V (common practice), else a battery of more; the same at every setting. */
export function cellsOf({ cells, emf, range }: Supply): number {
  return cells ?? ((range?.max ?? emf).value.compare(2) > 0 ? 3 : 1);
}

function bodyOf(component: Component, symbols: DrawingStyle['symbols']): Body {
  switch (component.kind) {
    case 'supply':
      return varied(battery(cellsOf(component)), component.range);
    case 'resistor': {
      const outline =
        symbols === 'ansi' ? 'M-22,0L-18,-8L-11,8L-4,-8L4,8L11,-8L18,8L22,0' : 'M-22,-8L22,-8L22,8L-22,8Z';
      return varied(body(8, reach, outline), component.range);
    }
    case 'lamp':
      return body(14, 14, `${circle}M-9.9,-9.9L9.9,9.9M-9.9,9.9L9.9,-9.9`);
    case 'switch':
      return body(
        12,
        15,
        ring(-12, 3) + ring(12, 3) + (component.closed ? 'M-9,0L9,0' : 'M-9.5,-1.5L11,-11'),
      );
    case 'ammeter':
      return body(14, 14, circle, 'A');
    case 'voltmeter':
      return body(14, 14, circle, 'V');
    case 'wire':
      return body(4, reach, 'M-22,0L22,0');
  }
}

const leads = (gap: number): string => (gap < reach ? `M-22,0L-${gap},0M${gap},0L22,0` : '');

/** Path data without arcs, drawn narrower. */
const narrowed = (path: string): string =>
  path.replace(/([-\d.]+),/g, (_, x: string) => `${Math.round(6 * Number(x)) / 10},`);

/**
 * IEC 60617 symbols, as schools draw them; with 'ansi' the resistor is the zigzag of IEEE 315. What is taken out has no leads: it
 * stands in a gap between two open ends.
 */
export function glyphOf(component: Component, symbols: DrawingStyle['symbols']): Glyph {
  const { lead, ...glyph } = bodyOf(component, symbols);
  const { lines, filled } = glyph;
  if (component.condition !== 'broken') return { ...glyph, lines: leads(lead) + lines, ends: '' };
  const ends = ring(-20, 2) + ring(20, 2);
  return lead > 15
    ? { ...glyph, lines: narrowed(lines), filled: narrowed(filled), ends }
    : { ...glyph, ends };
}

/** Path data of a glyph turned clockwise round the origin. */
export function turned(path: string, turn: Turn): string {
  const sine = turn % 180 === 0 ? 0 : turn === 90 ? 1 : -1;
  const cosine = turn === 0 ? 1 : turn === 180 ? -1 : 0;
  return path.replace(/([-\d.]+),([-\d.]+)/g, (_, x: string, y: string) => {
    const [u, v] = [Number(x), Number(y)];
    return `${u * cosine - v * sine} ${u * sine + v * cosine}`;
  });
}
