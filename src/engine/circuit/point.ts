/**
 * Whether a node is a labelled point: its name is a capital with at most two more letters or digits (`X`, `P1`), which stands in the
 * drawing.
 */
export const isPoint = (node: string): boolean => /^[A-Z][A-Za-z\d]{0,2}$/.test(node);
