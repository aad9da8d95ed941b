import fc from 'fast-check';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { positive, type Part } from './random-circuit.ts';
import { part } from './resistor-network.ts';

/** A network in the plane, and its dual: a node for each face, and across each resistor R one of 1/R between the faces beside it. */
export interface PlaneNetwork {
  readonly list: readonly Part[];
  readonly dual: readonly Part[];
}

/** What parts two faces: a resistor between two corners. */
interface Border {
  readonly from: string;
  readonly to: string;
  readonly faces: readonly [string, string];
}

/** The borders of a grid of cells, of which some have a diagonal, rising or falling. */
function borders(width: number, height: number, diagonals: readonly number[]): Border[] {
  const corner = (x: number, y: number): string => `n${x}${y}`;
  /** The face of a cell at its side: cells with a diagonal have two, and beyond the last is the face round all. */
  const face = (x: number, y: number, side: 'up' | 'down' | 'left' | 'right'): string => {
    if (x < 0 || y < 0 || x >= width || y >= height) return 'out';
    const diagonal = (diagonals[y * width + x] ?? 0) % 3;
    const first = diagonal === 1 ? side === 'up' || side === 'left' : side === 'up' || side === 'right';
    return `f${x}${y}${diagonal && !first ? 'b' : ''}`;
  };
  const found: Border[] = [];
  for (let y = 0; y <= height; y++)
    for (let x = 0; x <= width; x++) {
      const from = corner(x, y);
      if (x < width)
        found.push({ from, to: corner(x + 1, y), faces: [face(x, y - 1, 'down'), face(x, y, 'up')] });
      if (y < height)
        found.push({ from, to: corner(x, y + 1), faces: [face(x - 1, y, 'right'), face(x, y, 'left')] });
      if (x === width || y === height) continue;
      const diagonal = (diagonals[y * width + x] ?? 0) % 3;
      const ends = diagonal === 1 ? [corner(x + 1, y), corner(x, y + 1)] : [from, corner(x + 1, y + 1)];
      const [tail = '', head = ''] = ends;
      if (diagonal) found.push({ from: tail, to: head, faces: [`f${x}${y}`, `f${x}${y}b`] });
    }
  return found;
}

/** Takes out borders, each time making one face of two, unless they are one already: then what is left would fall in two. */
function opened(all: readonly Border[], draws: readonly number[]): Border[] {
  let left = [...all];
  for (const draw of draws) {
    const gone = left[draw % left.length];
    if (!gone || gone.faces[0] === gone.faces[1]) continue;
    const [kept, lost] = gone.faces;
    const faces = ([a, b]: readonly [string, string]): [string, string] => [
      a === lost ? kept : a,
      b === lost ? kept : b,
    ];
    left = left.filter((each) => each !== gone).map((each) => ({ ...each, faces: faces(each.faces) }));
  }
  return left;
}

/** Grids of one to six cells with random diagonals and random openings. */
export const planeNetworks: fc.Arbitrary<PlaneNetwork> = fc
  .tuple(
    fc.integer({ min: 1, max: 3 }),
    fc.integer({ min: 1, max: 2 }),
    fc.array(fc.nat(2), { minLength: 6, maxLength: 6 }),
    fc.array(fc.nat(), { maxLength: 5 }),
    fc.array(positive, { minLength: 24, maxLength: 24 }),
  )
  .map(([width, height, diagonals, draws, ohms]) => {
    const left = opened(borders(width, height, diagonals), draws);
    const value = (k: number): Fraction => new Fraction(ohms[k % ohms.length] ?? '1');
    return {
      list: left.map(({ from, to }, k) => part(`R${k + 1}`, from, to, value(k))),
      dual: left.map(({ faces: [a, b] }, k) => part(`R${k + 1}`, a, b, value(k).inverse())),
    };
  });
