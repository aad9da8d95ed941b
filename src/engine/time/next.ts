import { faultIn, type Circuit, type Component, type Fuse, type State } from '../circuit/index.ts';
import { solve, type Fault, type Solution } from '../solve/index.ts';

/** Keeps a fuse that carries just its rating from being over it by a rounding. */
const rounding = 1 + 1e-9;

/** Faults of a loop that has an e.m.f. and no resistance: nothing limits its current. */
const unlimited: readonly Fault['code'][] = ['short circuit', 'supplies in contradiction'];

/** How many times its rating a fuse carries. */
function load({ id, ratedCurrent }: Fuse, solution: Solution): number {
  const isUnlimited = solution.faults.some(({ code, ids }) => unlimited.includes(code) && ids.includes(id));
  return isUnlimited ? Infinity : Math.abs(solution.current(id) ?? 0) / Number(ratedCurrent.value);
}

/** A component as it is in truth: a wire for what is secretly bridged, and taken out what is secretly broken. */
function inTruth(component: Component): Component {
  const { id, from, to } = component;
  const fault = faultIn(component);
  return fault === 'bridged'
    ? { id, kind: 'wire', from, to }
    : fault
      ? { ...component, condition: fault }
      : component;
}

/** The fuse that blows first: the one furthest above its rating, and of those that nothing limits the one of the smallest. */
function weakest(told: Circuit, state: State): Fuse | undefined {
  const circuit = { ...told, components: told.components.map(inTruth) };
  const solution = solve(circuit, { state });
  let first: { readonly fuse: Fuse; readonly times: number } | undefined;
  for (const fuse of circuit.components) {
    // A wire across a fuse takes its current; what is taken out has none.
    if (fuse.kind !== 'fuse' || fuse.blown || fuse.condition || state.blown.includes(fuse.id)) continue;
    const times = load(fuse, solution);
    if (times <= rounding) continue;
    const isTied =
      times === first?.times && fuse.ratedCurrent.value.compare(first.fuse.ratedCurrent.value) < 0;
    if (!first || times > first.times || isTied) first = { fuse, times };
  }
  return first?.fuse;
}

/**
 * The state of a circuit some seconds later: of the fuses above their rating the one furthest above it blows, then, of what is left,
 * the next, until none is above. A fuse counts as blowing at once: after no time nothing has happened, after any time all has. What
 * has blown stays blown. The same state where nothing blows, as where the circuit cannot be solved for another reason than a loop
 * that nothing limits.
 */
export function next(circuit: Circuit, state: State, seconds: number): State {
  if (!(seconds > 0)) return state;
  const fuse = weakest(circuit, state);
  return fuse ? next(circuit, { ...state, blown: [...state.blown, fuse.id] }, seconds) : state;
}
