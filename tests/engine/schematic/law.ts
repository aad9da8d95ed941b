import type { Circuit } from '../../../src/engine/circuit/index.ts';
import type { Drawing } from '../../../src/engine/schematic/index.ts';

/** What every drawing of a series–parallel circuit obeys. */
export interface Law {
  readonly name: string;
  /** Throws where the drawing breaks it. */
  readonly check: (drawing: Drawing, circuit: Circuit) => void;
}
