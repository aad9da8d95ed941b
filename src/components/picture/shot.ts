import { drawSchematic, textSize, type Circuit, type Drawing, type DrawingStyle } from '../../engine/core.ts';
import type { Picture } from '../../engine/picture/index.ts';

/** What a board shows at one moment, kept for a picture that is made a little later. */
export interface Shot {
  readonly circuit: Circuit;
  readonly drawing: Drawing;
  /** How it was drawn: meters have the room of any reading. */
  readonly plan: DrawingStyle;
  /** The numbers that change, as they stand, by id. */
  readonly numbers: ReadonlyMap<string, string>;
  readonly labels: boolean;
  readonly values: boolean;
  readonly arrows: boolean;
  readonly picture: Picture;
}

/** The roles of texts that change. */
const changing: ReadonlySet<string> = new Set(['value', 'reading']);

/** A line to write an answer on, in the room of the number, of at least six letters. */
const blank = (width: number): string => '_'.repeat(Math.max(6, Math.floor(width / (0.64 * textSize))));

/** Planned anew with room to write where a value is hidden; as it is where none is. */
function withBlanks({ circuit, drawing, plan, values }: Shot): Drawing {
  const hidden = new Set(circuit.components.filter((each) => each.hidden).map(({ id }) => id));
  if (hidden.size === 0 || !values) return drawing;
  const unknown = new Set(
    drawing.labels.filter(({ id, text }) => hidden.has(id) && text === '?').map(({ id }) => id),
  );
  const texts = (id: string): string | undefined => (unknown.has(id) ? blank(0) : plan.values?.(id));
  const planned = drawSchematic(circuit, { ...plan, values: texts });
  return planned.kind === 'drawing' ? planned : drawing;
}

/** The drawing with the texts and the arrowheads that the board shows; on paper what is not told is a line to write on. */
export function asShown(shot: Shot, onPaper: boolean): Drawing {
  const { numbers, labels, values, arrows } = shot;
  const drawing = onPaper ? withBlanks(shot) : shot.drawing;
  return {
    ...drawing,
    labels: drawing.labels
      .map((label) => {
        const now = changing.has(label.role) ? numbers.get(label.id) : undefined;
        if (now === undefined) return label;
        return { ...label, text: onPaper ? now.replace('?', blank(label.box.width)) : now };
      })
      .filter(({ id, role }) => {
        if (role === 'value') return values || numbers.has(id);
        return labels || role === 'quantity' || role === 'reading';
      }),
    ribbons: arrows ? drawing.ribbons : drawing.ribbons.map((run) => ({ ...run, arrows: [] })),
  };
}
