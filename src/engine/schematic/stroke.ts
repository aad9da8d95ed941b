import type { Turn } from './drawing.ts';
import type { Glyph } from './glyph.ts';

/** A point turned clockwise round the origin. */
function turned(x: number, y: number, turn: Turn): string {
  const [u, v] = turn === 0 ? [x, y] : turn === 90 ? [-y, x] : turn === 180 ? [-x, -y] : [y, -x];
  return `${round(u)} ${round(v)}`;
}

const round = (x: number): number => Math.round(x * 100) / 100;

function polyline(coordinates: readonly number[], turn: Turn): string {
  const points: string[] = [];
  for (let i = 0; i + 1 < coordinates.length; i += 2) {
    points.push(turned(coordinates[i] ?? 0, coordinates[i + 1] ?? 0, turn));
  }
  return `M${points.join('L')}`;
}

function circle(x: number, y: number, radius: number, turn: Turn): string {
  const arc = `a${radius} ${radius} 0 0 1 `;
  return `M${turned(x, y, turn)}m${-radius} 0${arc}${2 * radius} 0${arc}${-2 * radius} 0`;
}

/** The lines of a glyph as path data. */
export function linesOf({ strokes, circles }: Glyph, turn: Turn): string {
  const lines = strokes.map((stroke) => polyline(stroke, turn));
  return [...lines, ...circles.map(([x, y, radius]) => circle(x, y, radius, turn))].join('');
}

/** The filled parts of a glyph as path data. */
export function fillsOf({ filled }: Glyph, turn: Turn): string {
  return filled.map((polygon) => `${polyline(polygon, turn)}Z`).join('');
}
