import type { CSSResultGroup } from 'lit';
import { surroundingRanges, type Circuit, type Said } from '../../engine/core.ts';
import { ink } from '../page/index.ts';
import { rows, SliderControl, styles, type Dial } from '../slider/index.ts';
import { feltIn, type Felt } from './felt.ts';
import { settingsOf, textOf } from './value-text.ts';

/**
 * Where a circuit stands: the temperature that its thermistors feel and the light that its LDRs feel, each by a slider, a box to type
 * in, and two step buttons, in a board or anywhere in a page. Its value is what it turns, in °C and lx, as an exact text, such as
 * "temperature 5 light 200".
 *
 * @tag rheolet-surroundings
 * @attr {string} aria-label - Is taken as `label`.
 * @attr {string} of - What to turn: `temperature` or `light`. Unless said, what the sensors of the circuit feel.
 * @fires {CustomEvent<ChangeDetail>} rheolet-input - A slider is moving.
 * @fires {CustomEvent<ChangeDetail>} rheolet-change - A new value has settled.
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board, or nothing in it feels its surroundings.
 * @csspart label - The name given to it, and before each slider the word for what it turns.
 * @csspart slider - A slider.
 * @csspart value - A box that shows a value and takes a typed one.
 * @csspart step - A step button.
 * @csspart problem - Why there is nothing to turn, or why what was typed cannot be had.
 */
export class RheoletSurroundings extends SliderControl<Felt> {
  static override styles: CSSResultGroup = [ink, styles, rows];

  protected override find(circuit: Circuit): Felt | Said {
    return feltIn(circuit, this.of);
  }

  protected override text(felt: Felt): string {
    return textOf(felt);
  }

  protected override put(felt: Felt, text: string): void {
    const { board } = this.link;
    if (board) board.settings = { ...board.settings, ...settingsOf(felt, text) };
  }

  protected override dials({ quantities }: Felt): readonly Dial[] {
    return quantities.map(([name, quantity]) => ({
      id: name,
      letter: name,
      quantity,
      range: surroundingRanges[name],
      between: true,
    }));
  }
}
