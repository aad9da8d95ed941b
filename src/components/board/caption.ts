import { html, nothing, type TemplateResult } from 'lit';
import { isMeter, isOwn, isSupply, say, type Component } from '../../engine/core.ts';
import { readingOf, type ReadingStyle, type Snapshot } from '../link/index.ts';

const letters: Readonly<Partial<Record<Component['kind'], readonly string[]>>> = {
  supply: ['V', 'I', 'P'],
  source: ['I', 'V', 'P'],
  switch: ['V', 'I'],
  push: ['V', 'I'],
  fuse: ['V', 'I'],
  ammeter: ['I'],
  voltmeter: ['V'],
  wire: ['I'],
};

/** The letters of what is read of a component; of most all four. */
export const lettersOf = ({ kind }: Component): readonly string[] => letters[kind] ?? ['V', 'I', 'R', 'P'];

/** Meters show signs, and the power of a supply, which may be charged. */
export function styleOf(component: Component, letter: string): ReadingStyle {
  return isMeter(component) || (isSupply(component) && letter === 'P') ? { as: 'signed' } : {};
}

function reading(component: Component, snapshot: Snapshot, letter: string): TemplateResult {
  const { id, hidden } = component;
  const name = `${letter}_${id}`;
  const own = (hidden ?? false) && isOwn(component, name);
  const style = styleOf(component, letter);
  const text = own ? '?' : readingOf(snapshot, name, style).text;
  const change = snapshot.comparison?.changeOf(snapshot, name, style);
  const symbol = letter === 'V' ? snapshot.course.letter : letter;
  return html`<span class="reading"><var>${symbol}</var> = ${text}${change && ` (${change.text})`}</span>`;
}

/** What the component that is pointed at or focused reads, under the drawing. */
export function caption(component: Component | undefined, snapshot: Snapshot): TemplateResult {
  const hint = snapshot.covered ? 'covered' : component ? undefined : 'caption hint';
  if (!component || hint)
    return html`<span class="hint">${say({ code: hint ?? 'caption hint', data: {} })}</span>`;
  const about = lettersOf(component).map((letter) => reading(component, snapshot, letter));
  return html`<b>${component.id}</b>${about.length > 0 ? about : nothing}`;
}
