import {
  CircuitFormatError,
  settingOf,
  withFault,
  surroundingsSince,
  withValue,
  type Circuit,
  type Setting,
} from '../../engine/core.ts';
import type { Settings } from '../link/index.ts';

/** A step of a board's history: what was set before an act (or, undone, after it), and when on this page it was taken. */
export interface Step {
  readonly settings: Settings;
  readonly turn: number;
}

/** All that a board remembers; every act makes a new one. */
export interface BoardState {
  /** The circuit that the page gave. */
  readonly start: Circuit;
  /** The circuit as it stands. */
  readonly circuit: Circuit;
  /** What is settled and differs from the start. */
  readonly settings: Settings;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /** What is being moved; absent at rest. */
  readonly moving?: string;
}

/** Counts what is done, undone and redone on all boards of the page, so that their order is known. */
let turns = 0;
const step = (settings: Settings): Step => ({ settings, turn: (turns += 1) });

/** Where a circuit differs from its start. */
function differences(start: Circuit, circuit: Circuit): Settings {
  if (circuit === start) return {};
  const changed = circuit.components.flatMap((component, place) => {
    const setting = settingOf(component, start.components[place]);
    return setting ? [[component.id, setting] as const] : [];
  });
  return Object.fromEntries([...changed, ...surroundingsSince(circuit, start)]);
}

function withSettings(start: Circuit, settings: Settings): Circuit {
  return Object.entries(settings).reduce((circuit, [id, value]) => withValue(circuit, id, value), start);
}

/** The settings that a circuit can take: those whose id, kind and range fit. */
export function fitting(circuit: Circuit, settings: Settings): Settings {
  const kept = Object.entries(settings).filter(([id, value]) => {
    try {
      withValue(circuit, id, value);
      return true;
    } catch (error) {
      if (error instanceof CircuitFormatError) return false;
      throw error;
    }
  });
  return Object.fromEntries(kept);
}

/** A board with a circuit that the page gives, keeping those of the former settings that still fit. */
export function opened(start: Circuit, former: Settings = {}): BoardState {
  const settings = differences(start, withSettings(start, fitting(start, former)));
  return { start, circuit: withSettings(start, settings), settings, past: [], future: [] };
}

function at(state: BoardState, settings: Settings): BoardState {
  const { start, past, future } = state;
  return { start, circuit: withSettings(start, settings), settings, past, future };
}

const same = (a: Settings, b: Settings): boolean =>
  Object.keys(a).length === Object.keys(b).length &&
  Object.entries(a).every(([id, value]) => b[id] === value);

/** A new present, the old one kept to be undone. */
function changed(state: BoardState, settings: Settings): BoardState {
  if (same(settings, state.settings)) return state.moving === undefined ? state : at(state, settings);
  return { ...at(state, settings), past: [...state.past, step(state.settings)], future: [] };
}

/** Shows a setting that is still moving. Throws CircuitFormatError where it cannot be had. */
export function moved(state: BoardState, id: string, value: Setting): BoardState {
  return { ...state, circuit: withValue(state.circuit, id, value), moving: id };
}

/** The start with what is secretly wrong with a circuit: that is no step of a history, nor in any setting. */
function faultsKept(start: Circuit, { components }: Circuit): Circuit {
  const same = components.every(({ fault }, place) => fault === start.components[place]?.fault);
  if (same) return start;
  return {
    ...start,
    components: start.components.map((each, place) => withFault(each, components[place]?.fault)),
  };
}

/** Settles a setting. Throws CircuitFormatError where it cannot be had. */
export function settled(state: BoardState, id: string, value: Setting): BoardState {
  const circuit = withValue(state.circuit, id, value);
  const start = faultsKept(state.start, circuit);
  const settings = differences(start, circuit);
  return start === state.start
    ? changed(state, settings)
    : changed(at({ ...state, start }, state.settings), settings);
}

/** Replaces all settings at once. Throws CircuitFormatError where one cannot be had. */
export function replaced(state: BoardState, settings: Settings): BoardState {
  return changed(state, differences(state.start, withSettings(state.start, settings)));
}

/** Back to the start; can itself be undone. */
export function reset(state: BoardState): BoardState {
  return changed(state, {});
}

/** One act back, where there is one. */
export function undone(state: BoardState): BoardState {
  const { past, future, settings } = state;
  const before = past.at(-1);
  if (!before) return state;
  return { ...at(state, before.settings), past: past.slice(0, -1), future: [step(settings), ...future] };
}

/** One undone act forth again, where there is one. */
export function redone(state: BoardState): BoardState {
  const [next, ...future] = state.future;
  if (!next) return state;
  return { ...at(state, next.settings), past: [...state.past, step(state.settings)], future };
}
