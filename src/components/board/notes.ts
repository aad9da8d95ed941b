import { say } from '../../engine/index.ts';
import type { Snapshot } from '../link/index.ts';
import { componentName, isMeter } from './component-text.ts';

/** The faults, remarks and cautions of a circuit, as sentences. */
export function notes(snapshot: Snapshot): readonly string[] {
  if (snapshot.covered) return [];
  const { faults, remarks, cautions } = snapshot.readings;
  return [...faults, ...cautions, ...remarks].map((note) => say(note));
}

/** What is said once a change has settled: what is wrong, else what the meters read. */
export function spokenNotes(snapshot: Snapshot): string {
  if (snapshot.covered) return '';
  const told = notes(snapshot);
  if (told.length > 0) return told.join(' ');
  const meters = snapshot.circuit.components.filter(isMeter);
  return meters.map((meter) => `${componentName(meter, snapshot, true)}.`).join(' ');
}
