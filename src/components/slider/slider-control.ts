import { html, nothing, type TemplateResult } from 'lit';
import { say } from '../../engine/core.ts';
import { Control, type Subject, type Shown } from '../control/index.ts';
import { settingText, type Dial } from './dial.ts';
import { Slider } from './slider.ts';

/** What stands before a slider: the symbol of textbooks, the word where there is none; nothing before the one of a resistor. */
function symbolOf(letter: Dial['letter']): TemplateResult | typeof nothing {
  if (letter === 'R') return nothing;
  if (letter === 'E' || letter === 'r' || letter === 'I')
    return html`<var part="label" aria-hidden="true">${letter}</var>`;
  const word = say({ code: 'turns', data: { letter, of: '' } });
  return html`<span part="label" class="word" lang="en" aria-hidden="true">${word}</span>`;
}

/** What a pupil turns quantities with, a slider for each. */
export abstract class SliderControl<S extends Subject> extends Control<S> {
  readonly #sliders = new Map<Dial['letter'], Slider>();

  /** The quantities of a thing that it turns, given what that was at the start. */
  protected abstract dials(subject: S, start: S): readonly Dial[];

  protected override text(subject: S): string {
    return this.dialsOf(subject)
      .map((dial) => settingText(dial))
      .join(' ');
  }

  /** Its board is still known: what is moving settles. */
  override disconnectedCallback(): void {
    for (const slider of this.#sliders.values()) slider.settle();
    super.disconnectedCallback();
  }

  protected override handles({ subject, name, label, barred }: Shown<S>): TemplateResult {
    return html`${label}${this.dialsOf(subject).map((dial) => {
      const { letter } = dial;
      const called = letter === 'R' ? name : say({ code: 'turns', data: { letter, of: name } });
      const slider = this.#slider(letter).render(dial, called, barred);
      return html`<span class="dial">${symbolOf(letter)}${slider}</span>`;
    })}`;
  }

  /** The same, beside what there is at the start. */
  protected dialsOf(subject: S | undefined = this.subject): readonly Dial[] {
    return subject ? this.dials(subject, this.start ?? subject) : [];
  }

  #slider(letter: Dial['letter']): Slider {
    const dial = (): Dial | undefined => this.dialsOf().find((each) => each.letter === letter);
    const slider = this.#sliders.get(letter) ?? new Slider(this, this.link, dial);
    this.#sliders.set(letter, slider);
    return slider;
  }
}
