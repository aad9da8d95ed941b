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

/** A component's symbol. It is drawn along the x axis round the origin, then turned and moved. */
export interface PlacedSymbol {
  readonly id: string;
  /** Centre. */
  readonly at: Point;
  /** Degrees clockwise from "`from` is at the left". */
  readonly turn: 0 | 90 | 180 | 270;
  /** The lines of the symbol as SVG path data round the origin, turned already. */
  readonly path: string;
  /** Parts of it that are filled, as SVG path data; '' if none. */
  readonly filled: string;
  /** Letters inside the symbol (`A`, `V`), upright; '' if none. */
  readonly letter: string;
  /** What it covers. */
  readonly box: Box;
}

/** The wires of one node. */
export interface NodeWires {
  readonly node: string;
  readonly lines: readonly (readonly Point[])[];
  /** Junction dots. */
  readonly dots: readonly Point[];
}

/** One line of text beside a symbol. */
export interface PlacedLabel {
  readonly id: string;
  /** `label` is the component's name, `value` what was written of its values. */
  readonly role: 'label' | 'value';
  readonly text: string;
  /** Baseline point. */
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly box: Box;
}

/** A stretch of wire (or of component) that carries one current. */
export interface RibbonRun {
  /** The currents that add up along it, each +1 where it flows along `points` when positive, −1 where against. */
  readonly carries: readonly { readonly id: string; readonly sign: 1 | -1 }[];
  /** Right-angled path, at least two points. */
  readonly points: readonly Point[];
  /** Where its arrowhead stands (on the path); absent where the run is too short for one. */
  readonly arrow?: { readonly at: Point; readonly turn: 0 | 90 | 180 | 270 };
}

/** A circuit on a plane: numbers and short texts only. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly symbols: readonly PlacedSymbol[];
  readonly wires: readonly NodeWires[];
  readonly labels: readonly PlacedLabel[];
  readonly ribbons: readonly RibbonRun[];
  /** Free boxes (not over anything drawn) where a control may stand beside its component. */
  readonly places: readonly { readonly id: string; readonly box: Box }[];
}

/** How a circuit is drawn. */
export interface DrawingStyle {
  /** IEC 60617 (default) or IEEE 315 symbols. */
  readonly symbols?: 'iec' | 'ansi';
  /** The widest the drawing may be, where it can be helped: at 320 it grows downwards instead. Default 640. */
  readonly width?: number;
  /** The text beside each component, by id; default: its label and its values as written. */
  readonly values?: (id: string) => string;
}
