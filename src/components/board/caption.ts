import { html, nothing, type TemplateResult } from 'lit';
import { isMeter, say, type Component } from '../../engine/core.ts';
import { readingOf, type Snapshot } from '../link/index.ts';

/** What is read of a component; of any other all four. */
const letters: Readonly<Partial<Record<Component['kind'], readonly string[]>>> = {
  supply: ['V', 'I', 'P'],
  switch: ['V', 'I'],
  push: ['V', 'I'],
  fuse: ['V', 'I'],
  ammeter: ['I'],
  voltmeter: ['V'],
  wire: ['I'],
};

/** What a reading has done since it was held. */
function change(snapshot: Snapshot, name: string, signed: boolean): string {
  const { held } = snapshot;
  if (!held || snapshot.covered) return '';
  const style = signed ? ({ as: 'signed' } as const) : {};
  const before = {
    ...snapshot,
    start: snapshot.start,
    circuit: snapshot.circuit,
    solution: held,
    readings: held,
  };
  const [was, is] = [before, snapshot].map((each) => readingOf(each, name, style));
  if (was?.value === undefined || is?.value === undefined) return '';
  const size = (value: number): number => (signed ? value : Math.abs(value));
  const by = was.text === is.text ? 0 : size(is.value) > size(was.value) ? 1 : -1;
  return ` (${say({ code: 'against held', data: { change: by, before: was.text } })})`;
}

function reading(component: Component, snapshot: Snapshot, letter: string): TemplateResult {
  const { id, kind, hidden } = component;
  const name = `${letter}_${id}`;
  const own = letter === 'R' && (hidden ?? false);
  const signed = isMeter(component) || (kind === 'supply' && letter === 'P');
  const text = own ? '?' : readingOf(snapshot, name, signed ? { as: 'signed' } : {}).text;
  const symbol = letter === 'V' ? snapshot.course.letter : letter;
  return html`<span class="reading"
    ><var>${symbol}</var> = ${text}${own ? '' : change(snapshot, name, signed)}</span
  >`;
}

/** What the component that is pointed at or focused reads, under the drawing. */
export function caption(component: Component | undefined, snapshot: Snapshot): TemplateResult {
  const hint = snapshot.covered ? 'covered' : component ? undefined : 'caption hint';
  if (!component || hint)
    return html`<span class="hint">${say({ code: hint ?? 'caption hint', data: {} })}</span>`;
  const about = (letters[component.kind] ?? ['V', 'I', 'R', 'P']).map((letter) =>
    reading(component, snapshot, letter),
  );
  return html`<b>${component.id}</b>${about.length > 0 ? about : nothing}`;
}
