import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawingToSVG } from '../../../src/engine/picture/index.ts';
import { drawSchematic, equipForks, equipWebs, equipWipers } from '../../../src/engine/schematic/index.ts';
import { drawForks } from '../../../src/engine/schematic/fork/index.ts';
import { drawWeb } from '../../../src/engine/schematic/web/index.ts';
import { drawWipers } from '../../../src/engine/schematic/wiper/index.ts';

equipWebs(drawWeb);
equipForks(drawForks);
equipWipers(drawWipers);

/** A picture that somebody has looked at: the circuit in the notation, and how it is drawn. */
interface Picture {
  readonly circuit: string;
  readonly width?: number;
  readonly symbols?: 'ansi';
  /** Amperes by id, for ribbons. */
  readonly currents?: Readonly<Record<string, number>>;
}

/** A model harbour's circuits, by file name. */
export const pictures: Readonly<Record<string, Picture>> = {
  'quay-lamp': { circuit: 'B1 1.5 V + S1 closed + Lquay 5 Ω' },
  'buoy-in-series': { circuit: 'B1 3 × 1.5 V + A1 + Lbuoy 6 Ω + Rsand [1..20] 12 Ω' },
  'three-quays': {
    circuit: 'B1 6 V + (S1 closed + L1 6 V 3 W) ∥ (S2 + L2 6 V 3 W) ∥ (S3 closed + L3 6 V 3 W)',
  },
  'fog-control': {
    circuit: 'B1 6 V + A1 + (R1 [4..40] 12 Ω ∥ (A2 + L1 8 Ω))',
    currents: { B1: 1.25, A1: 1.25, R1: 0.5, A2: 0.75, L1: 0.75 },
  },
  'fog-control-narrow': { circuit: 'B1 6 V + A1 + (R1 [4..40] 12 Ω ∥ (A2 + L1 8 Ω))', width: 300 },
  'pump-with-voltmeter': { circuit: 'B1 12 V r 0.5 Ω + A1 + (Rpump 5.5 Ω ∥ V1)' },
  'lighthouse-in-steps': { circuit: 'B1 9 V + R1 3 Ω + (R2 6 Ω ∥ R3 12 Ω) + R4 5 Ω hidden' },
  'two-supplies': { circuit: 'B1 6 V r 1 Ω + (B2 4.5 V r 2 Ω ∥ Rtide 5 Ω)' },
  'eight-in-a-ring': {
    circuit: 'B1 12 V + R1 2 Ω + R2 4 Ω + R3 6 Ω + R4 8 Ω + R5 10 Ω + R6 12 Ω + R7 14 Ω + R8 16 Ω',
  },
  'sensor-network': { circuit: 'Rfog 6 Ω + (R2 4 Ω ∥ (R3 8 Ω + (R4 2 Ω ∥ R5 3 Ω))) + R6 1 Ω' },
  'sensor-network-narrow': {
    circuit: 'Rfog 6 Ω + (R2 4 Ω ∥ (R3 8 Ω + (R4 2 Ω ∥ R5 3 Ω))) + R6 1 Ω',
    width: 300,
  },
  'zigzag-symbols': {
    circuit: 'B1 6 V + A1 + R1 [4..40] 12 Ω + R2 24 Ω; V1 across R1; V2 across R2',
    symbols: 'ansi',
  },
  'nested-harbour': {
    circuit:
      'B1 12 V + S1 closed + ((A1 + R1 4 Ω + (R2 8 Ω ∥ V1)) ∥ (A2 + (L1 6 Ω ∥ L2 6 Ω) + R3 3 Ω) ∥ (R4 20 Ω + S2))',
  },
  'quay-lamp-out': {
    circuit: 'B1 6 V + S1 closed + (L1 6 V 3 W ∥ L2 6 V 3 W broken ∥ L3 6 V 3 W)',
    currents: { B1: 1, S1: 1, L1: 0.5, L3: 0.5 },
  },
  'buoy-bridged': {
    circuit: 'B1 6 V + Lbuoy 6 Ω bridged + Lquay 6 Ω',
    currents: { B1: 1, 'Lbuoy bridge': 1, Lquay: 1 },
  },
  'fog-bridge': {
    circuit: 'B1 6 V + ((R1 10 Ω + @p + Rfog [4..40] 20 Ω) ∥ (R3 30 Ω + @q + R4 40 Ω)); A1 @p–@q',
    currents: { B1: 0.6, R1: 0.4, Rfog: 0.3, A1: 0.1, R3: 0.2, R4: 0.3 },
  },
  'bridge-between-terminals': {
    circuit: '(R1 1 Ω + @p + R2 2 Ω) ∥ (R3 3 Ω + @q + (R4 4 Ω ∥ L1 6 Ω)); V1 @p–@q',
    width: 300,
  },
  'points-of-a-question': { circuit: 'B1 12 V + S1 closed + @X + R1 2 Ω + @Y + R2 4 Ω + @Z' },
  'bridge-with-points': {
    circuit: 'B1 6 V + ((R1 10 Ω + @X + R2 20 Ω) ∥ (R3 30 Ω + @Y + R4 40 Ω)); V1 @X–@Y',
    currents: { B1: 0.2857, R1: 0.2, R2: 0.2, R3: 0.0857, R4: 0.0857 },
  },
  'harbour-cube': {
    circuit:
      'B1 6 V @a–@h; R1 1 Ω @a–@b; R2 1 Ω @a–@c; R3 1 Ω @a–@d; R4 1 Ω @b–@e; R5 1 Ω @b–@f; R6 1 Ω @c–@e; ' +
      'R7 1 Ω @c–@g; R8 1 Ω @d–@f; R9 1 Ω @d–@g; R10 1 Ω @e–@h; R11 1 Ω @f–@h; R12 1 Ω @g–@h',
  },
  'five-quays-all-joined': {
    circuit:
      'R1 1 Ω @a–@b; R2 1 Ω @a–@c; R3 1 Ω @a–@d; R4 1 Ω @a–@e; R5 1 Ω @b–@c; R6 1 Ω @b–@d; R7 1 Ω @b–@e; ' +
      'R8 1 Ω @c–@d; R9 1 Ω @c–@e; R10 1 Ω @d–@e; ends @a–@b',
  },
  'two-boats-and-a-loose-end': {
    circuit: 'B1 6 V @a–@b; Lboat 6 Ω @a–@b; S1 @a–@c; B2 3 V @d–@e; R1 5 Ω @d–@f; Lbuoy 8 Ω @f–@e',
  },
  'steps-light': {
    circuit:
      'B1 6 V + ((changeover S1a closed + changeover S2a closed) ∥ (changeover S1b + changeover S2b)) + L1 12 Ω',
    currents: { B1: 0.5, S1a: 0.5, S2a: 0.5, L1: 0.5 },
  },
  'two-leading-lights': {
    circuit:
      'B1 6 V + A1 + ((changeover S1a + R1 4 Ω + L1 8 Ω) ∥ (changeover S1b closed + L2 12 Ω broken)) + push S2 closed',
    width: 300,
  },
  dimmer: {
    circuit: 'B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a [0..100 step 1] 30 Ω ∥ L1 6 V 0.6 W)',
    currents: { B1: 0.081, R1b: 0.081, R1a: 0.025, L1: 0.056 },
  },
  'track-half-gone': {
    circuit:
      'B1 6 V + A1 + ((R2 5 Ω + potentiometer R1b 60 Ω bridged) ∥ V2) + ' +
      '((potentiometer R1a 40 Ω broken + R3 5 Ω) ∥ (A2 + L1 60 Ω) ∥ V1)',
    width: 300,
    symbols: 'ansi',
  },
  'everything-done': {
    circuit:
      'B1 [0..3] 1.5 V r 1 Ω bridged + S1 broken + A1 bridged + ' +
      '(R1 [4..40] 12 Ω broken ∥ (R2 8 Ω bridged + B2 6 V r 1 Ω broken)) + ' +
      'L1 6 Ω broken + (W1 broken ∥ V1 bridged) + R3 5 Ω broken',
    width: 300,
    currents: { B1: 1.5, 'B1 bridge': -1.5 },
  },
};

/** The picture of a circuit as SVG text. */
export function svgOf({ circuit, width, symbols, currents }: Picture): string {
  const drawing = drawSchematic(parseCircuit(circuit), {
    ...(width && { width }),
    ...(symbols && { symbols }),
  });
  if (drawing.kind === 'irreducible') throw new Error(drawing.reason);
  return drawingToSVG(drawing, { title: circuit, ...(currents && { currents: (id) => currents[id] ?? 0 }) });
}
