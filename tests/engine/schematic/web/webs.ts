import type { Circuit } from '../../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../../src/engine/notation/index.ts';
import { partsOf } from '../../../../src/engine/schematic/drawing-of.ts';
import { layoutOf, type Choice, type Layout } from '../../../../src/engine/schematic/web/layout.ts';
import { webOf, type Web } from '../../../../src/engine/schematic/web/web.ts';
import { pieces } from '../../../../src/engine/topology/index.ts';

/** A bridge of five arms with its supply. */
export const bridge: Circuit = parseCircuit(
  'B1 6 V + ((R1 1 Ω + @p + R2 2 Ω) ∥ (R3 3 Ω + @q + R4 4 Ω)); R5 5 Ω @p–@q',
);

/** Two branches of three parts, joined twice. */
export const ladder: Circuit = parseCircuit(
  'B1 6 V + ((R1 1 Ω + @p + R2 2 Ω + @r + R3 3 Ω) ∥ (R4 3 Ω + @q + R5 4 Ω + @s + R6 2 Ω)); R7 5 Ω @p–@q; R8 5 Ω @r–@s',
);

/** The webs of a circuit's pieces that are not series and parallel all the way down. */
export const websOf = (circuit: Circuit): Web[] =>
  pieces(circuit)
    .filter(({ tree }) => !tree)
    .map(webOf);

/** A web laid out, as where there is enough room. */
export const laidOut = (circuit: Circuit, web: Web, choice: Choice, upright = true): Layout | undefined =>
  layoutOf(web, { part: partsOf(circuit, {}), stacked: false, left: false, upright }, choice);

/** Every choice of layout. */
export const choices: readonly Choice[] = [false, true].flatMap((mirrored) =>
  [-1, 0.02, 1].map((steepest) => ({ mirrored, steepest })),
);
