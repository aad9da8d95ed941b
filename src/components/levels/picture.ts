import { svg, type SVGTemplateResult } from 'lit';
import { levelPlan, type LevelPlan } from '../../engine/core.ts';
import { once } from '../link/index.ts';
import type { Axis } from './axis.ts';
import type { Step } from './steps.ts';

/** Where everything stands from side to side: a circuit's start tells it. */
export const planOf: (start: Parameters<typeof levelPlan>[0]) => LevelPlan = once(levelPlan);

/** Lengths in pixels. A column is wide enough for "12.0 mV" and, `letter` by letter, for its label. */
const size = { left: 52, right: 8, top: 12, height: 200, feet: 44, column: 62, letter: 9.5, tick: 5 };

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
}

/** A level diagram: level lines of nodes, upright lines of components, their names and p.d.s at the foot of their columns. */
export function picture({ plan, axis, steps, potential, held, name, lit, at }: Picture): SVGTemplateResult {
  const column = Math.max(size.column, ...plan.columns.map(({ length }) => length * size.letter));
  const foot = size.top + size.height;
  const height = foot + size.feet;
  const width = size.left + plan.columns.length * column + size.right;
  const x = (place: number): number => size.left + (place + 0.5) * column;
  /** A height is seen to a tenth of a pixel. */
  const y = (volts: number): number =>
    size.top + Math.round(((axis.high - volts) / (axis.high - axis.low)) * size.height * 10) / 10;
  const lines = (heightOf: Picture['held']): string =>
    plan.lines
      .map(({ node, first, last }) => {
        const volts = heightOf(node);
        return volts === undefined ? '' : `M${x(first)} ${y(volts)}H${x(last)}`;
      })
      .join('');
  const upright = ([start, end]: readonly [number, number]): SVGTemplateResult => {
    const way = end < start ? 4 : -4;
    const arrow = `M-4 ${(start + end) / 2 + way}l4 ${-way}l4 ${way}`;
    return svg`<path class="guide" d="M0 ${Math.max(start, end)}V${foot}"></path>
      <path class=${start === end ? 'step flat' : 'step'} d="M0 ${start}V${end}"></path>
      <path class="arrow" d=${Math.abs(end - start) > 14 ? arrow : ''}></path>`;
  };
  const component = ({ id, heights, carries, text, spoken }: Step, place: number): SVGTemplateResult =>
    svg`<g
      class="component ${id === lit ? 'lit' : ''} ${carries ? '' : 'still'}"
      data-id=${id}
      role="img"
      tabindex=${id === at ? 0 : -1}
      aria-label=${spoken}
      transform="translate(${x(place)})"
    >
      <rect class="hit" x=${1 - column / 2} y="2" width=${column - 2} height=${height - 4} rx="2"></rect>
      ${heights && upright([y(heights[0]), y(heights[1])])}
      <text class="label" y=${foot + 18}>${id}</text>
      <text class="value" y=${foot + 35}>${text}</text>
    </g>`;
  return svg`<svg width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="group" aria-label=${name}>
    <path class="grid" d=${axis.marks.map(({ volts }) => `M${size.left - size.tick} ${y(volts)}H${width}`).join('')}></path>
    <path class="axis" d="M${size.left} ${size.top}V${foot}"></path>
    ${axis.marks.map(({ volts, text }) => svg`<text class="mark" aria-hidden="true" x=${size.left - 8} y=${y(volts)}>${text}</text>`)}
    <path class="held" d=${lines(held)}></path>
    <path class="lines" d=${lines(potential)}></path>
    ${steps.map(component)}
  </svg>`;
}
