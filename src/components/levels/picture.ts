import { svg, type SVGTemplateResult } from 'lit';
import { labelParts, subscript, type LevelPlan } from '../../engine/core.ts';
import type { Axis } from '../axis/index.ts';
import { sideways } from './sideways.ts';
import type { Step } from './steps.ts';

/** Heights in pixels: of the diagram, and of a row of texts under it. */
const size = { top: 12, height: 200, row: 51, label: 18, value: 43, tick: 5 };

/** What is drawn of a level diagram, and what stands out. */
export interface Picture {
  readonly plan: LevelPlan;
  readonly axis: Axis;
  /** One for each column. */
  readonly steps: readonly Step[];
  readonly potential: (node: string) => number | undefined;
  /** The height of a node when the readings were held; undefined where none are. */
  readonly held: (node: string) => number | undefined;
  readonly name: string;
  /** The component that is pointed at here or on the board. */
  readonly lit: string;
  /** The component that the Tab key comes to. */
  readonly at: string;
  /** The pixels that it has from side to side. */
  readonly room: number;
}

/** A level diagram: level lines of nodes, upright lines of components, their names and p.d.s at the foot of their columns. */
export function picture({
  plan,
  axis,
  steps,
  potential,
  held,
  name,
  lit,
  at,
  room,
}: Picture): SVGTemplateResult {
  const { left, width, column, places, rows } = sideways(plan.columns, room);
  const foot = size.top + size.height;
  const height = foot + rows * size.row;
  /** A height is seen to a tenth of a pixel. */
  const y = (volts: number): number =>
    size.top + Math.round(((axis.high - volts) / (axis.high - axis.low)) * size.height * 10) / 10;
  const lines = (heightOf: Picture['held']): string =>
    plan.lines
      .map(({ node, first, last }) => {
        const volts = heightOf(node);
        return volts === undefined ? '' : `M${places[first]?.x} ${y(volts)}H${places[last]?.x}`;
      })
      .join('');
  const upright = ([start, end]: readonly [number, number], to: number): SVGTemplateResult => {
    const way = end < start ? 4 : -4;
    const arrow = `M-4 ${(start + end) / 2 + way}l4 ${-way}l4 ${way}`;
    return svg`<path class="guide" d="M0 ${Math.max(start, end)}V${to}"></path>
      <path class=${start === end ? 'step flat' : 'step'} d="M0 ${start}V${end}"></path>
      <path class="arrow" d=${Math.abs(end - start) > 14 ? arrow : ''}></path>`;
  };
  const component = ({ id, heights, carries, text, spoken }: Step, place: number): SVGTemplateResult => {
    const { x = 0, middle = 0, row = 0 } = places[place] ?? {};
    const under = foot + row * size.row;
    const [letters, below] = labelParts(id);
    return svg`<g
      class="component ${id === lit ? 'lit' : ''} ${carries ? '' : 'still'}"
      data-id=${id}
      role="img"
      tabindex=${id === at ? 0 : -1}
      aria-label=${spoken}
      transform="translate(${x})"
    >
      <rect class="hit" x=${1 - column / 2} y="2" width=${column - 2} height=${foot + 2} rx="2"></rect>
      ${heights && upright([y(heights[0]), y(heights[1])], under)}
      <text class="label" x=${middle - x} y=${under + size.label}>${letters}<tspan dy=${subscript.drop} font-size=${`${subscript.size}em`}>${below}</tspan></text>
      <text class="value" x=${middle - x} y=${under + size.value}>${text}</text>
    </g>`;
  };
  return svg`<svg width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="group" aria-label=${name}>
    <path class="grid" d=${axis.marks.map(({ value }) => `M${left - size.tick} ${y(value)}H${width}`).join('')}></path>
    <path class="axis" d="M${left} ${size.top}V${foot}"></path>
    ${axis.marks.map(({ value, text }) => svg`<text class="mark" aria-hidden="true" x=${left - 8} y=${y(value)}>${text}</text>`)}
    <path class="held" d=${lines(held)}></path>
    <path class="lines" d=${lines(potential)}></path>
    ${steps.map(component)}
  </svg>`;
}
