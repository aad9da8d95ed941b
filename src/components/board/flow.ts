import { bridges, track, type Circuit, type Tracker } from '../../engine/core.ts';
import type { Snapshot } from '../link/index.ts';

/** The currents of a circuit, in the order of its components with the wires that bridge them, and the powers of its lamps: followed while a slider moves. */
export class Flow {
  /** The labels of the lamps. */
  readonly lamps: readonly string[];
  readonly ids: readonly string[];
  /** Amperes. */
  readonly currents: Float64Array;
  /** Watts. */
  readonly powers: Float64Array;
  readonly #names: readonly string[];
  readonly #values: Float64Array;
  #tracked: { readonly id: string; readonly tracker: Tracker } | undefined;

  constructor(circuit: Circuit) {
    const { components } = bridges(circuit);
    this.ids = components.map(({ id }) => id);
    this.lamps = components.filter(({ kind }) => kind === 'lamp').map(({ id }) => id);
    this.#names = [...this.ids.map((id) => `I_${id}`), ...this.lamps.map((id) => `P_${id}`)];
    this.#values = new Float64Array(this.#names.length);
    this.currents = this.#values.subarray(0, this.ids.length);
    this.powers = this.#values.subarray(this.ids.length);
  }

  /** Takes the present values; while one resistor moves without a new solution, a multiplication and an addition each. */
  read(snapshot: Snapshot): void {
    const { circuit, moving } = snapshot;
    const resistor = moving === undefined ? undefined : circuit.components.find(({ id }) => id === moving);
    if (resistor?.kind !== 'resistor') {
      this.#tracked = undefined;
      const { readings } = snapshot; // solved here, and only here
      this.#names.forEach((name, place) => (this.#values[place] = Number(readings.quantity(name) ?? 0)));
      return;
    }
    const { id, resistance } = resistor;
    if (this.#tracked?.id !== id) this.#tracked = { id, tracker: track(circuit, id, this.#names) };
    if (!this.#tracked.tracker.at(Number(resistance.value), this.#values)) this.#values.fill(0);
  }
}
