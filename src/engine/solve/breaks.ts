import { isSwitch, type Component } from '../circuit/index.ts';

/** Whether it would conduct if it were closed and mended. */
export const isBreak = (part: Component): boolean =>
  isSwitch(part) ||
  part.kind === 'fuse' ||
  (part.condition === 'broken' && (part.kind !== 'voltmeter' || !!part.resistance));
