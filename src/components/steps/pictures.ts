import { svg, type TemplateResult } from 'lit';
import {
  describeCircuit,
  dotsOf,
  drawSchematic,
  labelParts,
  lineOf,
  subscript,
  terminalRadius,
  textSize,
  type Circuit,
  type Drawing,
  type DrawingStyle,
  type PlacedLabel,
  type PlacedSymbol,
} from '../../engine/core.ts';
import { stagesOf, type Stage } from '../../engine/reduction/index.ts';
import type { Step } from '../../engine/explain/index.ts';

/** As wide as a phone has room for. */
const width = 270;
/** The lines of what a step is about. */
const bold = 3.5;

function symbol({ id, at, path, filled, letter }: PlacedSymbol, isMeant: boolean): TemplateResult<2> {
  return svg`<g data-id=${id} transform="translate(${at.x} ${at.y})" stroke-width=${isMeant ? bold : 1.75}>
    <path d=${path}></path>
    <path d=${filled} fill="currentColor"></path>
    <text y="5" text-anchor="middle" fill="currentColor" stroke="none">${letter}</text>
  </g>`;
}

function label({ role, text, at, anchor }: PlacedLabel): TemplateResult<2> {
  const [letters, below] = role === 'value' ? [text, ''] : labelParts(text);
  return svg`<text
    x=${at.x}
    y=${at.y}
    text-anchor=${anchor}
    font-weight=${role === 'label' ? 600 : 400}
    fill="currentColor"
    stroke="none"
  >${letters}<tspan dy=${subscript.drop} font-size=${`${subscript.size}em`}>${below}</tspan></text>`;
}

function picture(drawing: Drawing, { circuit, about }: Stage): TemplateResult {
  const { wires, symbols, labels, terminals } = drawing;
  return svg`<svg
    part="circuit"
    role="img"
    aria-label=${describeCircuit(circuit)}
    viewBox="0 0 ${drawing.width} ${drawing.height}"
    width=${drawing.width}
    fill="none"
    stroke="currentColor"
    stroke-width="1.75"
    font-size=${textSize}
  >
    <path d=${wires.flatMap(({ lines, hops }) => lines.map((line) => lineOf(line, hops))).join('')}></path>
    <path d=${wires.map(({ dots }) => dotsOf(dots)).join('')} fill="currentColor" stroke="none"></path>
    ${terminals.map(({ x, y }) => svg`<circle cx=${x} cy=${y} r=${terminalRadius}></circle>`)}
    ${symbols.map((each) => symbol(each, about.includes(each.id)))}
    ${labels.map(label)}
  </svg>`;
}

/** Of each step the circuit as it is thought of there, drawn; nothing where it is the same as before. */
export function picturesOf(
  circuit: Circuit,
  steps: readonly Step[],
  symbols: NonNullable<DrawingStyle['symbols']>,
): readonly (TemplateResult | undefined)[] {
  return stagesOf(circuit, steps).map((stage) => {
    if (!stage) return undefined;
    const drawing = drawSchematic(stage.circuit, { width, symbols, values: (id) => stage.values[id] });
    return drawing.kind === 'drawing' ? picture(drawing, stage) : undefined;
  });
}
