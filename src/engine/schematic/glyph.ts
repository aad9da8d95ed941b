import { formOf, type Component, type Range, type Supply } from '../circuit/index.ts';
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

/** A circle round a point. */
export const ring = (x: number, r: number, y = 0): string =>
  `M${x - r},${y}a${r} ${r} 0 0 1 ${2 * r},0a${r} ${r} 0 0 1 ${-2 * r},0`;
const circle = ring(0, 14);

/** A cell's plates: the long thin one is positive. */
const long = (x: number): string => `M${x},-14L${x},14`;
const short = (x: number): string => `M${x - 2},-7L${x + 2},-7L${x + 2},7L${x - 2},7Z`;

/** The two cells at the ends of a battery; between them a dashed line stands for any others. */
function battery(cells?: number): Body {
  const outer = cells === 2 ? 12 : 16;
  const inner = outer - 8;
  const between = cells === 2 ? '' : [-7, -3, 1, 5].map((x) => `M${x},0L${x + 2},0`).join('');
  return body(14, outer, long(-outer) + long(inner) + between, '', short(-inner) + short(outer), true);
}

/** Terminals with their signs, each on the side where no arrow goes; the signs stay level, since only pairs are turned. */
const dc = (isVaried: boolean): Body =>
  body(
    14,
    13,
    `${ring(-10, 3)}${ring(10, 3)}M-10,-10m-4 0h8m-4 -4v8M10,${isVaried ? 10 : -10}m-4 0h8`,
    '',
    '',
    true,
  );

/** A supply as what it is, with an arrow through it where its e.m.f. may be turned. */
function supplyBody(supply: Supply): Body {
  switch (formOf(supply)) {
    case 'cell':
      return body(14, 4, long(-4), '', short(4), true);
    case 'battery':
      return battery(supply.cells);
    case 'supply':
      return dc(supply.range !== undefined);
  }
}

/**
 * A supply of constant current: a circle with a line across it (IEC 60617, ideal current source), and the arrowhead of its current on its
 * lead (IEC 60375), if it has one; with 'ansi' the arrow is in the circle (IEEE 315). Both from memory.
 */
const currentSource = ({ condition }: Component, symbols: DrawingStyle['symbols']): Body =>
  symbols === 'ansi'
    ? body(14, 14, `${circle}M9,0L-3,0`, '', 'M-9,0L-2,-4L-2,4Z', true)
    : body(14, 14, `${circle}M0,-14L0,14`, '', condition === 'broken' ? '' : 'M-22,0L-15,-4L-15,4Z', true);

/** A filled arrowhead that points down or up to the right. */
const arrowhead = (x: number, y: number, way: 1 | -1): string =>
  `M${x},${y}L${x - 2},${y - 5 * way}L${x - 5},${y - 2 * way}Z`;
const outline = 'M-22,-8L22,-8L22,8L-22,8Z';
/** A resistor, and what a sensor is made of. */
const resistor = (symbols: DrawingStyle['symbols']): string =>
  symbols === 'ansi' ? 'M-22,0L-18,-8L-11,8L-4,-8L4,8L11,-8L18,8L22,0' : outline;

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

function bodyOf(component: Component, symbols: DrawingStyle['symbols']): Body {
  switch (component.kind) {
    case 'supply':
      return varied(supplyBody(component), component.range);
    case 'source':
      return varied(currentSource(component, symbols), component.range);
    case 'resistor':
    case 'potentiometer':
      return varied(body(8, reach, resistor(symbols)), component.range);
    case 'lamp':
      return body(14, 14, `${circle}M-9.9,-9.9L9.9,9.9M-9.9,9.9L9.9,-9.9`);
    case 'heater':
      return body(8, reach, `${outline}M-11,-8L-11,8M0,-8L0,8M11,-8L11,8`);
    case 'motor':
      return body(14, 14, circle, 'M');
    case 'diode':
      return body(9, 8, diode, '', '', true);
    case 'led':
      return body(
        19,
        8,
        `${diode}M0,-11L4,-15M7,-10L11,-14`,
        '',
        arrowhead(7, -18, -1) + arrowhead(14, -17, -1),
        true,
      );
    case 'thermistor':
      return body(14, reach, `${resistor(symbols)}M-20,13L-13,13L13,-13`);
    case 'ldr':
      return body(
        18,
        reach,
        `${resistor(symbols)}M-12,-18L-7,-13M-2,-18L3,-13`,
        '',
        arrowhead(-3, -9, 1) + arrowhead(7, -9, 1),
      );
    case 'fuse':
      return body(7, 18, component.blown ? `${fuse}M-18,0L-5,0M5,0L18,0` : `${fuse}M-18,0L18,0`);
    case 'push': {
      const y = component.closed ? -3 : -7;
      return body(
        14,
        15,
        `${ring(-12, 3)}${ring(12, 3)}M-14,${y}L14,${y}M0,${y}L0,${y - 7}M-4,${y - 7}L4,${y - 7}`,
      );
    }
    case 'switch':
    case 'changeover':
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

const diode = 'M-8,-9L8,0L-8,9ZM-8,0L8,0M8,-9L8,9';
const fuse = 'M-18,-7L18,-7L18,7L-18,7Z';

const leads = (gap: number): string => (gap < reach ? `M-22,0L-${gap},0M${gap},0L22,0` : '');

/** Path data without arcs, drawn narrower. */
const narrowed = (path: string): string =>
  path.replace(/([-\d.]+),/g, (_, x: string) => `${Math.round(6 * Number(x)) / 10},`);

/**
 * IEC 60617 symbols, as schools draw them; with 'ansi' a resistor, a thermistor and an LDR are the zigzag of IEEE 315, and a supply of
 * constant current is its circle with an arrow. What is taken out has no leads: it
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

/** Path data with every pair moved. */
export const moved = (path: string, to: (u: number, v: number) => string): string =>
  path.replace(/([-\d.]+),([-\d.]+)/g, (_, x: string, y: string) => to(Number(x), Number(y)));

/** Path data of a glyph turned clockwise round the origin. */
export function turned(path: string, turn: Turn): string {
  const sine = turn % 180 === 0 ? 0 : turn === 90 ? 1 : -1;
  const cosine = turn === 0 ? 1 : turn === 180 ? -1 : 0;
  return moved(path, (u, v) => `${u * cosine - v * sine} ${u * sine + v * cosine}`);
}
