import { html, nothing, type TemplateResult } from 'lit';
import { say, type Component } from '../../engine/core.ts';
import { Control, type Shown } from '../control/index.ts';
import { settingText, type Dial } from './dial.ts';
import { Slider } from './slider.ts';

/** What a pupil turns quantities of a component with, a slider for each. */
export abstract class SliderControl<C extends Component> extends Control<C> {
  readonly #sliders = new Map<Dial['letter'], Slider>();

  /** The quantities of a component that it turns, given what it was at the start. */
  protected abstract dials(component: C, start: C): readonly Dial[];

  protected override text(component: C): string {
    return this.#dials(component)
      .map((dial) => settingText(dial))
      .join(' ');
  }

  /** Its board is still known: what is moving settles. */
  override disconnectedCallback(): void {
    for (const slider of this.#sliders.values()) slider.settle();
    super.disconnectedCallback();
  }

  protected override handles({ component, name, label, barred }: Shown<C>): TemplateResult {
    return html`${label}${this.#dials(component).map((dial) => {
      const { letter } = dial;
      const symbol = letter === 'R' ? nothing : html`<var part="label" aria-hidden="true">${letter}</var>`;
      const called = letter === 'R' ? name : say({ code: 'turns', data: { letter, of: name } });
      return html`<span class="dial">${symbol}${this.#slider(letter).render(dial, called, barred)}</span>`;
    })}`;
  }

  #dials(component = this.component): readonly Dial[] {
    return component ? this.dials(component, this.start ?? component) : [];
  }

  #slider(letter: Dial['letter']): Slider {
    const dial = (): Dial | undefined => this.#dials().find((each) => each.letter === letter);
    const slider = this.#sliders.get(letter) ?? new Slider(this, this.link, dial);
    this.#sliders.set(letter, slider);
    return slider;
  }
}
