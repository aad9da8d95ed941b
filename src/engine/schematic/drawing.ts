import type { Condition } from '../circuit/index.ts';

/** A point on the plane of the drawing; x to the right, y downwards; one unit is one CSS pixel at the drawing's natural size. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** An axis-parallel rectangle. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Degrees clockwise. */
export type Turn = 0 | 90 | 180 | 270;

/** A component's symbol. Its paths are turned already, and drawn round the origin: move them to `at`. */
export interface PlacedSymbol {
  readonly id: string;
  /** Centre. */
  readonly at: Point;
  /** From "`from` is at the left". */
  readonly turn: Turn;
  /** The lines of the symbol as SVG path data. */
  readonly path: string;
  /** Parts of it that are filled, as SVG path data; '' if none. */
  readonly filled: string;
  /** Letter inside the symbol (`A`, `V`), upright; '' if none. */
  readonly letter: string;
  /** What has been done to the component; what is 'broken' is drawn pale, in a gap between two open ends. */
  readonly condition?: Condition;
  /** Those ends as SVG path data, not pale, for they belong to the wires; '' if there are none. */
  readonly ends: string;
  /** What it covers. */
  readonly box: Box;
  /** Where the wire across it is, or would be, if that is further away than beside other symbols. */
  readonly aside?: Box;
  /** Where a pointer or the focus finds it: the symbol, its labels and the free space round them. No two overlap. */
  readonly hit: Box;
}

/** The wires of one node; or the wire across a bridged component, its id (`L1 bridge`) in the place of a node's name. */
export interface NodeWires {
  readonly node: string;
  readonly lines: readonly (readonly Point[])[];
  /** Junction dots, and that of a labelled point. */
  readonly dots: readonly Point[];
  /** Where one of these lines passes over another node's wire, which it does in a small half circle. */
  readonly hops: readonly Point[];
}

/** A current or a p.d. that is to be written beside its component. */
export interface WrittenQuantity {
  /** Its name: `I_R1`, `V_R1`. */
  readonly name: string;
  /** The component. */
  readonly id: string;
  readonly kind: 'current' | 'voltage';
  /** Its symbol in the letters of the class: `U_R1`. */
  readonly text: string;
  /** What follows, in its widest form: "= 0.000 A"; '' where its symbol stands alone. */
  readonly reading: string;
}

/** The arrow of a quantity that is written: a current's arrowhead on the wire, a p.d.'s line from end to end of its component. */
export interface QuantityArrow {
  readonly name: string;
  readonly kind: WrittenQuantity['kind'];
  readonly at: Point;
  /** Its lines as SVG path data, '' if none, and what is filled; turned already, and drawn round the origin. */
  readonly path: string;
  readonly filled: string;
  /** What it covers. */
  readonly box: Box;
}

/** One line of text beside a symbol or a point. */
export interface PlacedLabel {
  /** The component, the node that the point is, or the name of the quantity. */
  readonly id: string;
  /**
   * `label` is the component's name, `value` what was written of its values, `point` the letter of a labelled point, `quantity` the
   * symbol of a quantity, `reading` what it is.
   */
  readonly role: 'label' | 'value' | 'point' | 'quantity' | 'reading';
  readonly text: string;
  /** Baseline point. */
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Room for the widest text that a setting may bring. */
  readonly box: Box;
}

/** The 0 V mark at a node. Its paths are turned already, and drawn round the origin: move them to `at`. */
export interface PlacedMark {
  readonly node: string;
  /** Where its stem leaves the wire. */
  readonly at: Point;
  /** Its lines as SVG path data, and what is filled. */
  readonly path: string;
  readonly filled: string;
  /** What is written beside it, with its baseline point. */
  readonly text: string;
  readonly baseline: Point;
  readonly anchor: PlacedLabel['anchor'];
  /** What the symbol covers, and what the text. */
  readonly box: Box;
  readonly textBox: Box;
}

/** A component's current as part of a sum: +1 as it is, −1 the other way. */
export interface Share {
  readonly id: string;
  readonly sign: 1 | -1;
}

/** An arrowhead of a ribbon, pointing right where it is not turned. */
export interface Arrow {
  /** Its middle. */
  readonly at: Point;
  readonly turn: Turn;
}

/** A stretch of wires and components that carries one current, from junction to junction. */
export interface RibbonRun {
  /** The currents that add up to the one along `points`. */
  readonly carries: readonly Share[];
  /** Right-angled path, at least two points; a loop without a junction ends where it began. */
  readonly points: readonly Point[];
  /** Where its arrowheads stand while the current flows along `points`; turned round while it flows against. */
  readonly arrows: readonly Arrow[];
}

/** A circuit on a plane: numbers and short texts only. */
export interface Drawing {
  readonly kind: 'drawing';
  readonly width: number;
  readonly height: number;
  readonly symbols: readonly PlacedSymbol[];
  readonly wires: readonly NodeWires[];
  readonly labels: readonly PlacedLabel[];
  readonly ribbons: readonly RibbonRun[];
  /** Centres of the small open circles at the ends of a network without a supply. */
  readonly terminals: readonly Point[];
  /** The 0 V mark, if the circuit has one. */
  readonly mark?: PlacedMark;
  /** The arrows of the quantities that are written, if there are some. */
  readonly arrows?: readonly QuantityArrow[];
}

/** How a circuit is drawn. */
export interface DrawingStyle {
  /** IEC 60617 (default) or IEEE 315 symbols. */
  readonly symbols?: 'iec' | 'ansi';
  /** The widest the drawing may be, where it can be helped: at 300 it grows downwards instead. Default 640. */
  readonly width?: number;
  /** The values beside each component, by id ('' for none); undefined, and by default: its values as written. */
  readonly values?: (id: string) => string | undefined;
  /** Currents and p.d.s to be written beside their components, once `equipQuantities` has been told how. */
  readonly quantities?: readonly WrittenQuantity[];
}
