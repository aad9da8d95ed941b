/** Something that is brought up to date in a frame; all measuring on the page comes before all drawing. */
export interface FrameTask {
  /** Reads layout; must not write. */
  measure?(): void;
  /** Writes; must not read layout. */
  draw(): void;
}

/** A pupil cannot read digits that change faster than 15 times a second; one millisecond is left for a frame that is early. */
const interval = 1000 / 15 - 1;
/** Frames of a 60 Hz screen in one interval: the waiting tasks share them out. */
const turns = 4;

const due = new Set<FrameTask>();
const waiting = new Set<FrameTask>();
const drawn = new WeakMap<FrameTask, number>();
let asked = false;

function ask(): void {
  if (asked) return;
  asked = true;
  requestAnimationFrame(run);
}

function takeTurns(now: number): void {
  let share = Math.ceil(waiting.size / turns);
  for (const task of waiting) {
    if (share === 0) return;
    if (now - (drawn.get(task) ?? 0) < interval) continue;
    waiting.delete(task);
    due.add(task);
    share -= 1;
  }
}

/** One that fails must not keep the others from their frame. */
function each(tasks: readonly FrameTask[], work: (task: FrameTask) => void): void {
  for (const task of tasks) {
    try {
      work(task);
    } catch (error) {
      reportError(error);
    }
  }
}

function run(now: number): void {
  asked = false;
  takeTurns(now);
  const tasks = [...due];
  due.clear();
  each(tasks, (task) => task.measure?.());
  each(tasks, (task) => {
    drawn.set(task, now);
    task.draw();
  });
  if (waiting.size + due.size > 0) ask();
}

/** Runs a task in the next frame, once, however often it is asked for. */
export function nextFrame(task: FrameTask): void {
  waiting.delete(task);
  due.add(task);
  ask();
}

/** Runs a task soon, at most 15 times a second, tasks taking turns: for digits that change while something moves. */
export function inTurn(task: FrameTask): void {
  if (due.has(task)) return;
  waiting.add(task);
  ask();
}

/** Forgets a task that has not run yet. */
export function cancelFrame(task: FrameTask): void {
  due.delete(task);
  waiting.delete(task);
}
