import {
  drawSchematic,
  isMeter,
  schematicSize,
  type Circuit,
  type Drawing,
  type Irreducible,
  type Size,
  type WrittenQuantity,
} from '../../engine/core.ts';
import { once, type Snapshot } from '../link/index.ts';
import { meterRoom } from './component-text.ts';
import { formOfDrawing } from './drawing-form.ts';
import type { Word } from './shown.ts';
import { writer } from './written.ts';

/** More components than this are listed, not drawn. */
const most = 200;

/** Why a circuit is not drawn. */
export type Undrawn = 'too many' | 'empty' | 'part missing';

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

/** How a circuit is laid out: each part is made when it is first asked for. */
export interface Layout {
  /** Undefined where nothing can be drawn. */
  readonly size: () => Size | undefined;
  readonly drawing: () => Drawing | undefined;
  /** The texts that the values have room for; undefined as written. */
  readonly rooms: readonly (string | undefined)[];
  readonly written: readonly WrittenQuantity[];
}

type Drawn = Pick<Layout, 'size' | 'drawing'>;

const layouts = once(() => new Map<string, Drawn>());
/** The sizes of drawings, by what decides them. */
const sizes = new Map<string, Size>();
const mostSizes = 500;

/** A circuit in one style, drawn once for all boards that show it so. */
function drawn(
  circuit: Circuit,
  { symbols, width }: StageStyle,
  texts: readonly (string | undefined)[],
  quantities: readonly WrittenQuantity[],
): Drawn {
  const written = quantities.flatMap(({ text, reading }) => [text, reading]);
  const key = [symbols, width, ...texts, ...written].join();
  const known = layouts(circuit);
  const before = known.get(key);
  if (before) return before;
  const places = new Map(circuit.components.map(({ id }, place) => [id, place]));
  const values = (id: string): string | undefined => texts[places.get(id) ?? -1];
  const style = { symbols, width, values, quantities };
  let made: Drawing | Irreducible | undefined;
  const drawing = (): Drawing | undefined => {
    made ??= drawSchematic(circuit, style);
    return made.kind === 'drawing' ? made : undefined;
  };
  const size = (): Size | undefined => {
    const form = `${key}\n${formOfDrawing(circuit)}`;
    const found = sizes.get(form) ?? schematicSize(circuit, style);
    if (found && sizes.size < mostSizes) sizes.set(form, found);
    return found;
  };
  const layout = { size: () => (made ? drawing() : size()), drawing };
  known.set(key, layout);
  return layout;
}

/** Lays a circuit out in a style; undefined where it has too many components. */
export function layoutOf(snapshot: Snapshot, style: StageStyle): Layout | undefined {
  const { circuit } = snapshot;
  if (circuit.components.length > most) return undefined;
  const rooms = circuit.components.map((component) => {
    if (isMeter(component) && style.shown.has('meters')) return meterRoom(component, snapshot);
    return style.shown.has('values') ? undefined : '';
  });
  const written = writer()?.writtenOf(style.quantities, snapshot) ?? [];
  return { ...drawn(circuit, style, rooms, written), rooms, written };
}
