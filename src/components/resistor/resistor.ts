import type { CSSResultGroup } from 'lit';
import type { Circuit, Said } from '../../engine/core.ts';
import { ink } from '../page/index.ts';
import { SliderControl, styles, type Dial } from '../slider/index.ts';
import { turnableOf, type Turnable } from './turnable.ts';

/**
 * A slider-driven resistor, or the sliding contact of a potentiometer, by the resistance of one of its parts: a slider, a box to type
 * in, and two step buttons, in a board or anywhere in a page. Its value is its ohms as an exact text, such as "20" or "1/3".
 *
 * @tag rheolet-resistor
 * @attr {string} aria-label - Is taken as `label`.
 * @fires {CustomEvent<ChangeDetail>} rheolet-input - The slider is moving.
 * @fires {CustomEvent<ChangeDetail>} rheolet-change - A new value has settled.
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board, or nothing to be turned.
 * @csspart label - The name beside the slider.
 * @csspart slider - The slider.
 * @csspart value - The box that shows the value and takes a typed one.
 * @csspart step - A step button.
 * @csspart problem - Why there is nothing to turn, or why what was typed cannot be had.
 */
export class RheoletResistor extends SliderControl<Turnable> {
  static override styles: CSSResultGroup = [ink, styles];

  protected override find(circuit: Circuit): Turnable | Said {
    return turnableOf(circuit, this.of);
  }

  protected override dials({ id, resistance, range, hidden }: Turnable): readonly Dial[] {
    return [{ id, letter: 'R', quantity: resistance, range, hidden }];
  }
}
