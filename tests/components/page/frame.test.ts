import { expect } from '@open-wc/testing';
import { cancelFrame, inTurn, nextFrame, type FrameTask } from '../../../src/components/page/index.ts';

const frame = (): Promise<number> => new Promise(requestAnimationFrame);

/** A task that writes down what is done to it. */
class Noted implements FrameTask {
  readonly #name: string;
  readonly #log: string[];
  /** When the frames were due, whatever kept them. */
  times: number[] = [];
  constructor(name: string, log: string[]) {
    this.#name = name;
    this.#log = log;
  }
  measure(): void {
    this.#log.push(`measure ${this.#name}`);
  }
  draw(): void {
    this.#log.push(`draw ${this.#name}`);
    this.times.push(Number(document.timeline.currentTime));
  }
}

describe('the one frame of a page', () => {
  it('measures everything before it draws anything', async () => {
    const log: string[] = [];
    for (const name of ['a', 'b', 'c']) nextFrame(new Noted(name, log));
    await frame();
    expect(log).to.deep.equal(['measure a', 'measure b', 'measure c', 'draw a', 'draw b', 'draw c']);
  });

  it('draws a task once, however often it was asked for', async () => {
    const log: string[] = [];
    const task = new Noted('a', log);
    for (let ask = 0; ask < 5; ask += 1) {
      inTurn(task);
      nextFrame(task);
    }
    await frame();
    await frame();
    expect(log).to.deep.equal(['measure a', 'draw a']);
  });

  it('forgets what is cancelled', async () => {
    const log: string[] = [];
    const [a, b] = [new Noted('a', log), new Noted('b', log)];
    nextFrame(a);
    inTurn(b);
    cancelFrame(a);
    cancelFrame(b);
    await frame();
    expect(log).to.deep.equal([]);
  });

  it('asks for no frame while there is nothing to do', async () => {
    const asked = window.requestAnimationFrame.bind(window);
    let count = 0;
    window.requestAnimationFrame = (callback) => {
      count += 1;
      return asked(callback);
    };
    nextFrame(new Noted('a', []));
    await new Promise((done) => setTimeout(done, 150));
    window.requestAnimationFrame = asked;
    expect(count).to.equal(1);
  });

  it('is not spoilt by a task that fails', async () => {
    const handler = window.onerror;
    const errors: unknown[] = [];
    window.onerror = (_event, _source, _line, _column, error) => errors.push(error);
    const log: string[] = [];
    nextFrame({
      draw: () => {
        throw new Error('meant to fail');
      },
    });
    nextFrame(new Noted('b', log));
    await frame();
    await frame();
    window.onerror = handler;
    expect(log).to.deep.equal(['measure b', 'draw b']);
    expect(errors).to.have.length(1);
  });
});

describe('tasks that take turns', () => {
  it('are drawn at most 15 times a second each, and none is left behind', async () => {
    const tasks = Array.from({ length: 12 }, (_, index) => new Noted(String(index), []));
    const start = performance.now();
    while (performance.now() - start < 700) {
      tasks.forEach(inTurn);
      await frame();
    }
    for (const { times } of tasks) {
      expect(times.length).to.be.within(4, 12);
      const gaps = times.slice(1).map((time, index) => time - (times[index] ?? 0));
      expect(Math.min(...gaps)).to.be.at.least(1000 / 15 - 2);
    }
    tasks.forEach(cancelFrame);
  });

  it('are not all drawn in the same frame', async () => {
    const log: string[] = [];
    const tasks = Array.from({ length: 8 }, (_, index) => new Noted(String(index), log));
    tasks.forEach(inTurn);
    await frame();
    expect(log.filter((line) => line.startsWith('draw'))).to.have.length(2);
    tasks.forEach(cancelFrame);
  });

  it('are drawn in the next frame once they have settled', async () => {
    const task = new Noted('a', []);
    nextFrame(task);
    await frame();
    inTurn(task);
    nextFrame(task);
    await frame();
    expect(task.times).to.have.length(2);
  });
});
