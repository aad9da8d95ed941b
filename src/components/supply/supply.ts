import type { CSSResultGroup, PropertyDeclarations } from 'lit';
import { isSupply, type Circuit, type CurrentSource, type Said, type Supply } from '../../engine/core.ts';
import { componentOf } from '../control/index.ts';
import { ink } from '../page/index.ts';
import { rows, SliderControl, styles, type Dial } from '../slider/index.ts';
import { dialsOf } from './dials.ts';

/**
 * A supply to be turned: its e.m.f. E and its internal resistance r, or its constant current I, each by a slider, a box to type in, and
 * two step buttons. Its value is what it turns, as an exact text, such as "6 r 0.5".
 *
 * @tag rheolet-supply
 * @attr {string} aria-label - Is taken as `label`.
 * @fires {CustomEvent<ChangeDetail>} rheolet-input - A slider is moving.
 * @fires {CustomEvent<ChangeDetail>} rheolet-change - A new value has settled.
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board, or no such supply.
 * @csspart label - The name of the supply, and before each slider the symbol of what it turns, E, r or I.
 * @csspart slider - A slider.
 * @csspart value - A box that shows a value and takes a typed one.
 * @csspart step - A step button.
 * @csspart problem - Why there is nothing to turn, or why what was typed cannot be had.
 */
export class RheoletSupply extends SliderControl<Supply | CurrentSource> {
  static override styles: CSSResultGroup = [ink, styles, rows];
  static override properties: PropertyDeclarations = { turns: { type: String } };

  /** What to turn: `E`, `r` or `E r`. Unless said, what has a range in the circuit; where nothing has, both. Of a constant current there is only the one. */
  declare turns: string;

  constructor() {
    super();
    this.turns = '';
  }

  protected override find(circuit: Circuit): Supply | CurrentSource | Said {
    return componentOf(circuit, this.of, 'supply', circuit.components.filter(isSupply));
  }

  protected override dials(
    component: Supply | CurrentSource,
    start: Supply | CurrentSource,
  ): readonly Dial[] {
    return dialsOf(component, start, this.turns);
  }
}
