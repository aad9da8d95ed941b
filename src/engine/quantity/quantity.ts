import { Fraction } from './fraction.ts';
import type { Prefix } from './prefix.ts';

/** The units of what is read in a circuit. */
export type ReadingUnit = 'V' | 'A' | 'Ω' | 'W';

/** The units a circuit and what is round it are written in. */
export type Unit = ReadingUnit | 'F' | '°C' | 'lx';

/** A value with its unit, and how it was written, so that it can be written so again. */
export interface Quantity {
  /** The exact value in the SI unit, prefix worked in: 4.7 kΩ holds 4700. */
  readonly value: Fraction;
  readonly unit: Unit;
  /** The prefix it was written with. */
  readonly prefix: Prefix;
  /** Decimals written after that prefix (12.0 V has 1); absent where no finite decimal is the value (1/3). */
  readonly decimals?: number;
}
