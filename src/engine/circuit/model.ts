import type { Fraction, Quantity } from '../quantity/index.ts';

/** What every component has: a label, two ends, and whether its own value is kept from the pupil. */
interface TwoTerminal {
  /** The label on the diagram: `R1`. */
  readonly id: string;
  /** The node at its first end: of a supply the one that its current leaves by, elsewhere the one where the arrow of a current starts. */
  readonly from: string;
  /** The node at its other end. */
  readonly to: string;
  readonly hidden?: true;
  /** What has been done to it: taken out so that nothing conducts, or a wire put across it. Absent: neither. */
  readonly condition?: Condition;
  /** What is secretly wrong with it, for a pupil to find: it stands in no drawing and no words. Absent: nothing. */
  readonly fault?: Condition;
}

/** Taken out (a lamp unscrewed), or bridged by a wire of no resistance; as a secret fault, conducting nothing, or as a wire does. */
export type Condition = 'broken' | 'bridged';

/** One cell, a battery of several, or the terminals of a d.c. supply. */
export type SupplyForm = 'cell' | 'battery' | 'supply';

/** A cell, battery or d.c. supply; its `from` is the positive terminal. */
export interface Supply extends TwoTerminal {
  readonly kind: 'supply';
  /** The whole e.m.f. in volts; may be 0 or negative. */
  readonly emf: Quantity;
  /** Ohms; absent means 0. */
  readonly internalResistance?: Quantity;
  /** Cells in the battery, where it was written so (`3 × 1.5 V`). */
  readonly cells?: number;
  /** What its symbol shows, where that is not what is understood (see `formOf`). */
  readonly form?: SupplyForm;
  /** The e.m.f.s that it may be set to; absent where it is fixed. */
  readonly range?: Range;
  /** The internal resistances that it may be set to; absent where that is fixed. */
  readonly internalRange?: Range;
}

/** An ideal supply of constant current, whatever it is joined to; the current leaves it at its `from`. */
export interface CurrentSource extends TwoTerminal {
  readonly kind: 'source';
  /** Amperes out of `from`; may be 0 or negative. */
  readonly current: Quantity;
  /** The currents that it may be set to; absent where it is fixed. */
  readonly range?: Range;
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

/**
 * A part of the track of a potentiometer, from one of its ends to its sliding contact: R1a and R1b share the contact, and where it
 * slides the one gains the resistance that the other one loses.
 */
export interface Track extends TwoTerminal {
  readonly kind: 'potentiometer';
  readonly resistance: Quantity;
  /** What this part may be set to; the range of the other one is what that leaves of the whole. */
  readonly range?: Range;
  /** The most power that the whole track may take, in watts; both parts state it. */
  readonly ratedPower?: Quantity;
}

/** What turns electrical power into another: with a fixed resistance, stated or following from two of its ratings. */
interface Rated extends TwoTerminal {
  readonly resistance?: Quantity;
  readonly ratedVoltage?: Quantity;
  readonly ratedPower?: Quantity;
  readonly ratedCurrent?: Quantity;
}

/** A lamp. As a `filament` its resistance rises as it gets hot: two of its ratings say what it has when it is. */
export interface Lamp extends Rated {
  readonly kind: 'lamp';
  readonly filament?: true;
}

/** A heater or a motor that turns steadily. */
export interface Load extends Rated {
  readonly kind: 'heater' | 'motor';
}

/** A diode or a light-emitting diode: conducts from `from` to `to`, at its forward p.d. the rated current. */
export interface Diode extends TwoTerminal {
  readonly kind: 'diode' | 'led';
  /** Absent: 0.7 V of a diode, 2 V of an LED. */
  readonly forwardVoltage?: Quantity;
  /** Absent: 10 mA of a diode, 20 mA of an LED. */
  readonly ratedCurrent?: Quantity;
}

/** A thermistor with a negative temperature coefficient: its resistance at 25 °C. Or a light-dependent resistor: at 10 lx. */
export interface Sensor extends TwoTerminal {
  readonly kind: 'thermistor' | 'ldr';
  readonly resistance: Quantity;
}

/** A fuse: the most current it carries. That it has blown is a state of its own, not worked out from the current. */
export interface Fuse extends TwoTerminal {
  readonly kind: 'fuse';
  readonly ratedCurrent: Quantity;
  readonly resistance?: Quantity;
  readonly blown?: true;
}

/**
 * A switch that stays as it is put, or one that is closed while it is pushed; or a contact of a changeover (two-way) switch: S1a and
 * S1b share its common terminal, and one of them is closed.
 */
export interface Switch extends TwoTerminal {
  readonly kind: 'switch' | 'push' | 'changeover';
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
export type Component =
  Supply | CurrentSource | Resistor | Track | Lamp | Load | Diode | Sensor | Fuse | Switch | Meter | Wire;

/** The kinds of component. */
export type Kind = Component['kind'];

/** An immutable description: components and the nodes they join. */
export interface Circuit {
  readonly components: readonly Component[];
  /** The two ends of a network without a supply, first to last. */
  readonly terminals?: readonly [string, string];
  /** The node that carries the 0 V mark: potentials are counted from there. */
  readonly zero?: string;
  /** Where it stands; absent: at 25 °C in 10 lx. */
  readonly surroundings?: Surroundings;
}

/** What sensors feel. */
export interface Surroundings {
  /** Degrees Celsius. */
  readonly temperature?: Quantity;
  /** Lux. */
  readonly light?: Quantity;
}
