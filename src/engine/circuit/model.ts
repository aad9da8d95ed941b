import type { Fraction, Quantity } from '../quantity/index.ts';

/** What every component has: a label, two ends, and whether its own value is kept from the pupil. */
interface TwoTerminal {
  /** The label on the diagram: `R1`. */
  readonly id: string;
  /** The node at its first end: the positive terminal of a supply, where the arrow of a current starts elsewhere. */
  readonly from: string;
  /** The node at its other end. */
  readonly to: string;
  readonly hidden?: true;
  /** What has been done to it: taken out so that nothing conducts, or a wire put across it. Absent: neither. */
  readonly condition?: Condition;
}

/** Taken out (a lamp unscrewed), or bridged by a wire of no resistance. */
export type Condition = 'broken' | 'bridged';

/** A cell, battery or d.c. supply; its `from` is the positive terminal. */
export interface Supply extends TwoTerminal {
  readonly kind: 'supply';
  /** The whole e.m.f. in volts; may be 0 or negative. */
  readonly emf: Quantity;
  /** Ohms; absent means 0. */
  readonly internalResistance?: Quantity;
  /** Cells in the battery, where it was written so (`3 × 1.5 V`). */
  readonly cells?: number;
  /** The e.m.f.s that it may be set to; absent where it is fixed. */
  readonly range?: Range;
  /** The internal resistances that it may be set to; absent where that is fixed. */
  readonly internalRange?: Range;
}

/** The settings that a slider may reach. */
export interface Range {
  readonly min: Quantity;
  readonly max: Quantity;
  /** The distance between settings; absent where `scale` tells them. */
  readonly step?: Quantity;
  /** Evenly spaced in the logarithm (101 settings), or the preferred values of IEC 60063. */
  readonly scale?: 'log' | 'E12' | 'E24';
}

/** A resistor, fixed or, with a range, variable. */
export interface Resistor extends TwoTerminal {
  readonly kind: 'resistor';
  readonly resistance: Quantity;
  readonly range?: Range;
  /** Per cent either way. */
  readonly tolerance?: Fraction;
  /** The most power it may take, in watts. */
  readonly ratedPower?: Quantity;
}

/** A lamp with a fixed resistance: stated, or following from two of its ratings. */
export interface Lamp extends TwoTerminal {
  readonly kind: 'lamp';
  readonly resistance?: Quantity;
  readonly ratedVoltage?: Quantity;
  readonly ratedPower?: Quantity;
  readonly ratedCurrent?: Quantity;
}

/** A switch. */
export interface Switch extends TwoTerminal {
  readonly kind: 'switch';
  readonly closed: boolean;
}

/** An ammeter or a voltmeter; without a resistance it is ideal. */
export interface Meter extends TwoTerminal {
  readonly kind: 'ammeter' | 'voltmeter';
  readonly resistance?: Quantity;
}

/** A piece of wire without resistance. */
export interface Wire extends TwoTerminal {
  readonly kind: 'wire';
}

/** Anything with two terminals. */
export type Component = Supply | Resistor | Lamp | Switch | Meter | Wire;

/** The kinds of component. */
export type Kind = Component['kind'];

/** An immutable description: components and the nodes they join. */
export interface Circuit {
  readonly components: readonly Component[];
  /** The two ends of a network without a supply, first to last. */
  readonly terminals?: readonly [string, string];
}
