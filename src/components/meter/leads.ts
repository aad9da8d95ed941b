import { html, type TemplateResult } from 'lit';
import { isPoint, say, type Circuit } from '../../engine/core.ts';

/** The points at which the two leads of a voltmeter are: it reads the potential of the first above that of the second. */
export type Leads = readonly [from: string, to: string];

/** The labelled points of a circuit, by their letters. */
export const pointsOf = ({ components }: Circuit): string[] =>
  [...new Set(components.flatMap(({ from, to }) => [from, to]))].filter(isPoint).sort();

/**
 * Where the leads are: where they have been moved to, as long as the circuit has those points, else where `of` (`V_X_Y`) says, else
 * at the first and the last point; undefined where there are not two.
 */
export function leadsOf(circuit: Circuit, of: string, moved: Leads | undefined): Leads | undefined {
  const points = pointsOf(circuit);
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || first === last) return undefined;
  const [, from = '', to = ''] = of.split('_');
  const places: readonly Leads[] = [...(moved ? [moved] : []), [from, to]];
  return places.find((ends) => ends.every((end) => points.includes(end))) ?? [first, last];
}

/** A list of the points for each lead; `move` is told where they are put. */
export function leadsView(circuit: Circuit, leads: Leads, move: (leads: Leads) => void): TemplateResult {
  const points = pointsOf(circuit);
  const list = (end: 0 | 1): TemplateResult => {
    const put = ({ target }: Event): void => {
      if (!(target instanceof HTMLSelectElement)) return;
      move(end === 0 ? [target.value, leads[1]] : [leads[0], target.value]);
    };
    return html`<label
      >${say({ code: 'lead', data: { end: end === 0 ? 'from' : 'to' } })}
      <select @change=${put}>
        ${points.map((point) => html`<option .selected=${point === leads[end]}>${point}</option>`)}
      </select></label
    >`;
  };
  return html`<p part="leads" lang="en" dir="ltr">${list(0)} ${list(1)}</p>`;
}
