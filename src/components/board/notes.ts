import { isMeter, say } from '../../engine/core.ts';
import { once, type Snapshot } from '../link/index.ts';
import { componentName } from './component-text.ts';

const told = once(({ faults, cautions, remarks }: Snapshot['readings']) =>
  [...faults, ...cautions, ...remarks].map((note) => say(note)),
);

/** The faults, remarks and cautions of a circuit, as sentences. */
export const notes = ({ covered, readings }: Pick<Snapshot, 'covered' | 'readings'>): readonly string[] =>
  covered ? [] : told(readings);

/** What was done to components since, in words; what is broken or bridged now stands in the notes too, where they are not covered. */
function alterations({ circuit, covered }: Snapshot, before: Snapshot): readonly string[] {
  return circuit.components.flatMap(({ id, condition }, place) => {
    const same = condition === before.circuit.components[place]?.condition;
    if (same || (condition && !covered)) return [];
    return `${id}, ${say({ code: 'condition', data: { condition } })}.`;
  });
}

/** What is said once a change has settled: what was done, what is wrong, else what the meters read. */
export function spokenNotes(snapshot: Snapshot, before: Snapshot): string {
  const told = [...alterations(snapshot, before), ...notes(snapshot)];
  if (snapshot.covered || told.length > 0) return told.join(' ');
  const meters = snapshot.circuit.components.filter(isMeter);
  return meters.map((meter) => `${componentName(meter, snapshot, true)}.`).join(' ');
}
