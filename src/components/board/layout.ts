import {
  isMeter,
  planSchematic,
  type Circuit,
  type Drawing,
  type Irreducible,
  type PlannedDrawing,
  type WrittenQuantity,
} from '../../engine/core.ts';
import { once, type Snapshot } from '../link/index.ts';
import { meterRoom } from './component-text.ts';
import type { Word } from './shown.ts';
import { writer } from './written.ts';

/** More components than this are listed, not drawn. */
const most = 200;

/** Why a circuit is not drawn. */
export type Undrawn = 'too many' | 'empty';

/** How a board wants its circuit drawn. */
export interface StageStyle {
  readonly symbols: 'iec' | 'ansi';
  /** The room there is, in pixels. */
  readonly width: number;
  readonly shown: ReadonlySet<Word>;
  /** The name of the diagram. */
  readonly label: string;
  /** The quantities that are to be written, as the page asks for them. */
  readonly quantities: string;
}

/** How a circuit is laid out: its drawing is made when it is first asked for. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly drawing: () => Drawing;
  /** The texts that the values have room for; undefined as written. */
  readonly rooms: readonly (string | undefined)[];
  readonly written: readonly WrittenQuantity[];
}

type Known = Pick<Layout, 'width' | 'height' | 'drawing'> | Irreducible;

const layouts = once(() => new Map<string, Known>());

/** A circuit in one style, planned and drawn once for all boards that show it so. */
function planned(
  circuit: Circuit,
  { symbols, width }: StageStyle,
  texts: readonly (string | undefined)[],
  quantities: readonly WrittenQuantity[],
): Known {
  const key = [
    symbols,
    width,
    ...texts,
    ...quantities.flatMap(({ text, reading }) => [text, reading]),
  ].join();
  const known = layouts(circuit);
  const before = known.get(key);
  if (before) return before;
  const places = new Map(circuit.components.map(({ id }, place) => [id, place]));
  const values = (id: string): string | undefined => texts[places.get(id) ?? -1];
  const plan = planSchematic(circuit, { symbols, width, values, quantities });
  const made = plan.kind === 'planned' ? drawnOnce(plan) : plan;
  known.set(key, made);
  return made;
}

function drawnOnce({ width, height, draw }: PlannedDrawing): Known {
  let drawing: Drawing | undefined;
  return { width, height, drawing: () => (drawing ??= draw()) };
}

/** Lays a circuit out in a style; or says why it cannot be drawn. */
export function layoutOf(snapshot: Snapshot, style: StageStyle): Layout | Undrawn {
  const { circuit } = snapshot;
  if (circuit.components.length > most) return 'too many';
  const rooms = circuit.components.map((component) => {
    if (isMeter(component) && style.shown.has('meters')) return meterRoom(component, snapshot);
    return style.shown.has('values') ? undefined : '';
  });
  const written = writer()?.writtenOf(style.quantities, snapshot) ?? [];
  const known = planned(circuit, style, rooms, written);
  return 'drawing' in known ? { ...known, rooms, written } : 'empty';
}
