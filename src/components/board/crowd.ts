/*
 * Boards out of sight keep the room that they will have. How large a drawing will be can be planned; how much room there is for what
 * stands round it, only a board tells that has it rendered: the first of its like in a frame leads, the others follow.
 */

/** A board with what stands round its drawing, rendered in this frame. */
export interface Leader {
  /** Fulfilled once it is rendered. */
  readonly rendered: Promise<unknown>;
  /** The pixels from the lower edge of the drawing to that of the board's content. */
  readonly rest: () => number;
}

interface Follower {
  readonly leader: Leader;
  readonly reserve: (rest: number) => void;
}

/** By what decides how much room that takes. */
const leaders = new Map<string, Leader>();
let followers: Follower[] = [];

/** All measuring comes before all drawing. */
async function settle(): Promise<void> {
  const led = followers;
  leaders.clear();
  followers = [];
  const asked = new Set(led.map(({ leader }) => leader));
  await Promise.all([...asked].map(({ rendered }) => rendered));
  const rests = new Map([...asked].map((leader) => [leader, leader.rest()]));
  for (const { leader, reserve } of led) reserve(rests.get(leader) ?? 0);
}

/** A board leads those that have the same round their drawings, in this frame. */
export function lead(round: string, leader: Leader): void {
  if (leaders.size === 0) queueMicrotask(() => void settle());
  leaders.set(round, leader);
}

/** A board follows the one that leads, and is told how much room to keep, still in this frame; false where none leads. */
export function follow(round: string, reserve: (rest: number) => void): boolean {
  const leader = leaders.get(round);
  if (leader) followers.push({ leader, reserve });
  return leader !== undefined;
}
