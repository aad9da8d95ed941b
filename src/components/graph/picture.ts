import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { Axis } from '../axis/index.ts';
import { partsOf } from '../link/index.ts';
import type { Curves } from './curves.ts';
import { apart, pathOf, type Plane } from './plane.ts';

/** A point that is marked: along the axis, and up for each curve. */
export interface Mark {
  readonly at: number;
  readonly values: readonly (number | undefined)[];
}

/** What is drawn of a graph. */
export interface Picture {
  readonly along: Axis;
  readonly up: Axis;
  readonly plane: Plane;
  readonly curves: Curves;
  /** What stands beside each curve. */
  readonly names: readonly string[];
  readonly now: Mark;
  /** Where the board stood when its readings were held. */
  readonly held: Mark | undefined;
  /** The place that the pupil reads. */
  readonly read: number | undefined;
}

const size = { tick: 5, gap: 8, text: 16, letter: 9, dot: 4.5 };

/** Of so many marks every which one has room for its text. */
function strideOf({ marks }: Axis, { left, right }: Plane): number {
  const longest = Math.max(...marks.map(({ text }) => text.length)) * size.letter + size.gap;
  return Math.ceil((longest * (marks.length - 1)) / (right - left));
}

/** A name as textbooks write it: a letter and a subscript. */
export function symbolIn(name: string): SVGTemplateResult {
  const { letter, of } = partsOf(name);
  return of
    ? svg`<tspan class="letter">${letter}</tspan><tspan class="of" dy="3">${of}</tspan>`
    : svg`${letter}`;
}

/** A graph as on squared paper: hairlines, two axes, curves told apart by their dashes and by their names beside them. */
export function picture({ along, up, plane, curves, names, now, held, read }: Picture): SVGTemplateResult {
  const { left, right, top, bottom, width, height, x, y } = plane;
  const ends = curves.curves.map(({ values }) => values.findLastIndex((value) => value !== undefined));
  const heights = apart(
    curves.curves.map(({ values }, place) => y(values[ends[place] ?? -1] ?? 0)),
    size.text,
    bottom - size.gap,
  );
  const dots = (mark: Mark, kind: string): readonly (SVGTemplateResult | typeof nothing)[] =>
    mark.values.map((value) =>
      value === undefined
        ? nothing
        : svg`<circle class=${kind} cx=${x(mark.at)} cy=${y(value)} r=${size.dot}></circle>`,
    );
  const upright = (value: number): string => `M${x(value)} ${top}V${bottom}`;
  const level = (value: number): string => `M${left - size.tick} ${y(value)}H${right}`;
  const foot = y(0);
  const side = along.low < 0 && along.high > 0 ? x(0) : left;
  const stride = strideOf(along, plane);
  return svg`<svg width=${width} height=${height} viewBox="0 0 ${width} ${height}" aria-hidden="true">
    <path class="grid" d=${along.marks.map(({ value }) => upright(value) + `v${size.tick}`).join('')}></path>
    <path class="grid" d=${up.marks.map(({ value }) => level(value)).join('')}></path>
    <path class="axis" d="M${side} ${top}V${bottom}M${left} ${foot}H${right}"></path>
    ${along.marks.map(({ value, text }, place) => (place % stride ? nothing : svg`<text class="mark" x=${x(value)} y=${bottom + 24}>${text}</text>`))}
    ${up.marks.map(({ value, text }) => svg`<text class="mark up" x=${left - size.gap} y=${y(value)}>${text}</text>`)}
    <path class="now" d=${upright(now.at)}></path>
    ${read === undefined ? nothing : svg`<path class="read" d=${upright(read)}></path>`}
    ${curves.curves.map(
      ({ name, values }, place) => svg`<path
          class="curve"
          data-of=${name}
          data-dash=${place % 4}
          d=${pathOf(curves.settings, values, plane)}
        ></path>
        ${
          (ends[place] ?? -1) < 0
            ? nothing
            : svg`<text class="name" x=${right + size.gap} y=${heights[place] ?? 0}>${symbolIn(names[place] ?? name)}</text>`
        }`,
    )}
    ${held ? dots(held, 'held') : nothing}${dots(now, 'dot')}
  </svg>`;
}
