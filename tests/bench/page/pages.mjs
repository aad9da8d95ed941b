const circuit =
  'B1 12 V + A1 + R1 [4..40 step 0.1] 12 Ω + (R2 8 Ω ∥ R3 12 Ω ∥ (R4 6 Ω + L1 8 Ω)) + (R5 20 Ω ∥ (R6 10 Ω + A2)) + ' +
  '(R7 15 Ω ∥ R8 30 Ω)';

const scripts = { 'plain-board': '/.tmp/plain-board.js', 'md-slider': '/.tmp/material-slider.js' };

/** A board of a tag, with its slider or without. */
export function board(tag, hide = 'sliders', line = circuit) {
  return `<${tag} circuit="${line}" hide="${hide}"></${tag}>`;
}

/** Boards of a tag. One has its slider; more follow one that is not theirs, so they show none. */
export function boards(tag, count) {
  return board(tag, count === 1 ? '' : 'sliders').repeat(count);
}

/** The same, each with a circuit of its own. */
export function differing(tag, count) {
  return Array.from({ length: count }, (_, i) =>
    board(tag, 'sliders', circuit.replace('R2 8 Ω', `R2 ${8 + i} Ω`)),
  ).join('');
}

/** A page with the script of a tag, in columns as wide as a small telephone; `first` runs before the script. */
export function page(tag, content, first = '') {
  return `<!doctype html><style>body { display: grid; grid-template-columns: repeat(auto-fill, 320px) }</style>
    <script>${first}</script><script type="module" src="${scripts[tag] ?? '/dist/rheolet.js'}"></script>
    ${content}`;
}

/** Room for one board, for twenty at once, or for the first of many. */
export function viewport(count) {
  return count === 20 ? { width: 2400, height: 2800 } : { width: 1280, height: 900 };
}
