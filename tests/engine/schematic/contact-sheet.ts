import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawingToSVG } from '../../../src/engine/picture/index.ts';
import { drawSchematic, prepareRibbons } from '../../../src/engine/schematic/index.ts';
import { solve } from '../../../src/engine/solve/index.ts';
import { examples } from './examples.ts';
import { pictures } from './golden.ts';

/** One circuit with its solved currents, the widest ribbon 14 px wide. */
function cell(line: string, width: number): string {
  const circuit = parseCircuit(line);
  const drawing = drawSchematic(circuit, { width });
  if (drawing.kind === 'irreducible') return `<p>${line}: ${drawing.reason}</p>`;
  const solution = solve(circuit);
  const currents = (id: string): number => solution.current(id) ?? 0;
  const ids = circuit.components.map(({ id }) => id);
  const values = Float64Array.from(ids, currents);
  const ribbons = prepareRibbons(drawing, ids);
  const widest = Math.max(...drawing.ribbons.map((_, run) => Math.abs(ribbons.along(run, values))));
  const svg = drawingToSVG(drawing, { title: line, ...(widest > 0 && { currents, scale: 14 / widest }) });
  return `<figure>${svg}<figcaption>${drawing.width} × ${drawing.height}</figcaption></figure>`;
}

/** A page with all examples at a width, dark or light. */
export function pageOf(width: number, dark: boolean): string {
  const [paper, ink] = dark ? ['#16181c', '#e8e8e8'] : ['#ffffff', '#111111'];
  return `<!doctype html><style>
    body { margin: 12px; display: flex; flex-wrap: wrap; gap: 16px; align-items: flex-start; background: ${paper}; color: ${ink}; }
    figure { margin: 0; } figcaption { font: 11px sans-serif; opacity: 0.6; }
  </style>${[...examples, ...Object.values(pictures).map(({ circuit }) => circuit)].map((line) => cell(line, width)).join('')}`;
}
