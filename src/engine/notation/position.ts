/** A place in a text, as an editor tells it. */
interface Position {
  readonly line: number;
  readonly column: number;
}

// Tags that editors leave behind end a line too; one with a line break after it ends it once.
const lineEnd = /(?:<br\b[^<>]*>|<\/p>)(?:[ \t]*(?:\r\n?|\n))?|\r\n?|[\n\u2028\u2029]/iy;

/** The lines and columns (in code points, both from 1) of places in a text that are given in rising order. */
export function positions(text: string, places: readonly { readonly at: number }[]): readonly Position[] {
  let [reached, line, column] = [0, 1, 1];
  return places.map(({ at }) => {
    while (reached < at) {
      lineEnd.lastIndex = reached;
      const end = lineEnd.exec(text)?.[0];
      reached += end?.length ?? ((text.codePointAt(reached) ?? 0) > 0xffff ? 2 : 1);
      column = end ? 1 : column + 1;
      if (end) line += 1;
    }
    return { line, column };
  });
}
