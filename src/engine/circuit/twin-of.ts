/** The label of the other contact of a changeover switch, or of the other part of a potentiometer: S1b of S1a; '' where a label is neither's. */
export const twinOf = (id: string): string =>
  /[ab]$/.test(id) ? id.slice(0, -1) + (id.endsWith('a') ? 'b' : 'a') : '';
