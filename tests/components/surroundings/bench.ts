import '../../../src/components/surroundings/define.ts';
import type { RheoletSurroundings } from '../../../src/components/surroundings/index.ts';
import { besideBoard, type BesideBoard } from '../beside-board.ts';

export { boxes, mistakes, names, shown, sliders, steps, type } from '../slider/parts.ts';

/** The fog sensor: light and a resistor share the p.d. */
export const fog = 'B1 5 V + R1 10 kΩ + LDR1 8 kΩ; V1 across LDR1';
/** The frost sensor. */
export const frost = 'B1 6 V + R1 10 kΩ + T1 10 kΩ; V1 across T1';
/** Both on one path. */
export const weather = 'B1 6 V + T1 10 kΩ + LDR1 8 kΩ + A1; at 5 °C; at 200 lx';

/** A control of the surroundings beside a board. */
export const surroundingsBeside = (
  circuit: string,
  attributes: Readonly<Record<string, string>> = {},
): Promise<BesideBoard<RheoletSurroundings>> =>
  besideBoard<RheoletSurroundings>('rheolet-surroundings', circuit, attributes);
