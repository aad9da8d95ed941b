import { extremesOf } from '../extremes/index.ts';
import type { Snapshot } from '../link/index.ts';

/** A text as wide as any that a reading is likely to become, its digits made alike. */
export function roomFor(snapshot: Snapshot, write: (at: Snapshot) => string): string {
  const { start, settings, solution, held, course, covered } = snapshot;
  const others = extremesOf(start).map((extreme) =>
    write({ start, settings, solution, course, covered, ...(held && { held }), ...extreme }),
  );
  const texts = [write(snapshot), ...others].map((text) => text.replace(/\d/g, '0'));
  return texts.reduce((widest, text) => (text.length > widest.length ? text : widest));
}
