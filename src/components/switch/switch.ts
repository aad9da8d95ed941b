import { html, type CSSResultGroup, type TemplateResult } from 'lit';
import { type Circuit, isSwitch, type Said, say, type Switch } from '../../engine/core.ts';
import { componentOf, Control, type Shown } from '../control/index.ts';
import { changeOfSwitch, fire } from '../link/index.ts';
import { buttons, ink } from '../page/index.ts';
import { styles } from './styles.ts';
import { symbol } from './symbol.ts';

/**
 * A switch to be opened and closed, in a board or anywhere in a page. Its value is "open" or "closed".
 *
 * @tag rheolet-switch
 * @attr {string} aria-label - Is taken as `label`.
 * @fires {CustomEvent<ChangeDetail>} rheolet-change - It was opened or closed.
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board, or no such switch.
 * @csspart switch - The button.
 * @csspart label - The name in it.
 * @csspart symbol - The symbol of an open or a closed switch.
 * @csspart state - The word for its state.
 * @csspart problem - Why there is no switch.
 */
export class RheoletSwitch extends Control<Switch> {
  static override styles: CSSResultGroup = [ink, buttons, styles];

  protected override find(circuit: Circuit): Switch | Said {
    const switches = circuit.components.filter(isSwitch);
    return componentOf(circuit, this.of, 'switch', switches);
  }

  protected override text({ closed }: Switch): string {
    return closed ? 'closed' : 'open';
  }

  /**
   * `role="switch"` and not `aria-pressed`: the thing is a switch, "on" is what a closed one is, and its name stays the same, as
   * WAI-ARIA asks of both. The circuit's own word, open or closed, is its description.
   */
  protected override handles({ subject: { closed }, name, label, barred }: Shown<Switch>): TemplateResult {
    return html`<button
      type="button"
      role="switch"
      part="switch"
      aria-checked=${closed}
      aria-label=${name}
      aria-describedby="state"
      ?disabled=${barred}
      @click=${this.#toggle}
    >
      ${label} ${symbol(closed)}
      <span part="state" id="state" lang="en">${say({ code: 'switch state', data: { closed } })}</span>
    </button>`;
  }

  readonly #toggle = (): void => {
    const { board } = this.link;
    const { subject } = this;
    if (!board || !subject) return;
    const turned = { ...subject, closed: !subject.closed };
    board.set(turned.id, this.text(turned));
    fire(this, 'rheolet-change', changeOfSwitch(board.id, turned));
  };
}
