/** The end of a sentence: what was probably meant, if that is known. */
export const did = (suggestion: string): string => (suggestion ? `; did you mean ${suggestion}?` : '.');
