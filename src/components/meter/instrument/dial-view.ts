import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { Dial } from './dial.ts';
import { sweep } from './scale.ts';

/** Lengths in the picture; the pivot is its origin. */
const radius = { arc: 84, mark: 89, numeral: 94, text: 106, needle: 86, held: 62, peg: 76 };

/** The place at an angle from the upright, in degrees, and a distance from the pivot. */
function place(angle: number, distance: number): string {
  const radians = (angle * Math.PI) / 180;
  return `${(distance * Math.sin(radians)).toFixed(2)} ${(-distance * Math.cos(radians)).toFixed(2)}`;
}

/** Marks across the arc, as one path. */
const strokes = (angles: readonly number[], to: number): string =>
  angles.map((angle) => `M${place(angle, radius.arc)}L${place(angle, to)}`).join('');

/** A scale in ink with a thin needle, its two stops and the symbol of its unit; no case. */
export function dialView({ marks, numerals, unit, needle, held, words }: Dial): SVGTemplateResult {
  const [from, to] = [place(-sweep.scale, radius.arc), place(sweep.scale, radius.arc)];
  const peg = sweep.stop + 2; // its edge stops the needle
  return svg`<svg viewBox="-110 -116 220 140" aria-hidden="true">
    <path class="arc" d="M${from}A${radius.arc} ${radius.arc} 0 0 1 ${to}${strokes(marks, radius.mark)}"></path>
    <path class="major" d=${strokes(
      numerals.map(({ angle }) => angle),
      radius.numeral,
    )}></path>
    <path class="stops" d="M${place(-peg, radius.peg)}h0M${place(peg, radius.peg)}h0"></path>
    ${numerals.map(({ angle, text }) => {
      const [x, y] = place(angle, radius.text).split(' ');
      // A wide numeral keeps clear of its mark.
      return svg`<text x=${x} y=${y} dx=${(angle * text.length) / 22}>${text}</text>`;
    })}
    <text part="unit" y="14">${unit}</text>
    <text class="said" y="-40">${words}</text>
    ${
      held === undefined
        ? nothing
        : svg`<path class="held" d="M0-${radius.arc}V-${radius.held}" transform="rotate(${held.toFixed(2)})"></path>`
    }
    ${
      needle === undefined
        ? nothing
        : svg`<path class="needle" d="M0 0V-${radius.needle}" transform="rotate(${needle.toFixed(2)})"></path>`
    }
    <circle r="3"></circle>
  </svg>`;
}
