import '../../../src/components/meter/define.ts';
import type { RheoletMeter } from '../../../src/components/meter/index.ts';
import { besideBoard, type BesideBoard } from '../beside-board.ts';

/** A meter with its attributes, beside a board with a circuit. */
export function bench(
  circuit: string,
  attributes: Readonly<Record<string, string>> = {},
): Promise<BesideBoard<RheoletMeter>> {
  return besideBoard<RheoletMeter>('rheolet-meter', circuit, attributes);
}

/** What a screen reader says of a meter. */
export const named = (made: BesideBoard<RheoletMeter>): string => made.heard('[role=img]');
