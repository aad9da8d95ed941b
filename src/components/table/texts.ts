/** Texts by the names of quantities. */
export type Texts = Readonly<Record<string, string>>;

/** The texts of an object, whatever it is; blanks round them and empty ones are left out. */
export function textsOf(from: unknown): Texts {
  const entries = typeof from === 'object' && from !== null ? Object.entries(from) : [];
  const texts = entries.flatMap(([name, text]: [string, unknown]) =>
    typeof text === 'string' && text.trim() ? [[name, text.trim()] as const] : [],
  );
  return Object.fromEntries(texts);
}

/** What a JSON text holds; undefined where it is none. */
export function fromJSON(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
