import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import fc from 'fast-check';
import { parseCircuit } from '../../../src/engine/index.ts';
import { RheoletBoard } from '../../../src/components/board/index.ts';
import { onLatest } from '../../../src/components/board/page-history.ts';
import { join, leave } from '../../../src/components/board/present.ts';
import { BoardStore } from '../../../src/components/board/store.ts';
import type { RheoletResistor } from '../../../src/components/resistor/index.ts';
import { Bench, pumpLine, sliderOf } from './bench.ts';

/** An act on one of two boards, as plain as can be: R1 went from some ohms to others. */
interface Done {
  readonly board: 0 | 1;
  readonly from: number;
  readonly to: number;
}

/** The page's acts in their order, and those undone, the latest last. */
interface Model {
  done: Done[];
  undone: Done[];
  readonly ohms: [number, number];
  readonly inPage: [boolean, boolean];
}

type Command = fc.Command<Model, readonly [BoardStore, BoardStore]>;
const which = fc.constantFrom(0 as const, 1 as const);

function command(name: string, run: (...[model, stores]: Parameters<Command['run']>) => void): Command {
  return {
    check: () => true,
    toString: () => name,
    run(model, stores) {
      run(model, stores);
      expect(stores.map(({ snapshot }) => snapshot?.settings['R1'] ?? '12')).to.deep.equal(
        model.ohms.map(String),
      );
      for (const board of [0, 1] as const) {
        const count = (list: Done[]): number => list.filter((each) => each.board === board).length;
        const { past, future } = stores[board].state ?? {};
        expect([past?.length, future?.length]).to.deep.equal([count(model.done), count(model.undone)]);
      }
    },
  };
}

/** Takes the last that fits from one list to the other. */
function take(model: Model, act: 'undo' | 'redo', fits: (done: Done) => boolean): void {
  const [from, to] = act === 'undo' ? [model.done, model.undone] : [model.undone, model.done];
  const place = from.findLastIndex(fits);
  const [taken] = place < 0 ? [] : from.splice(place, 1);
  if (!taken) return;
  to.push(taken);
  model.ohms[taken.board] = act === 'undo' ? taken.from : taken.to;
}

const step = fc.constantFrom('undo' as const, 'redo' as const);
const commands: fc.Arbitrary<Command>[] = [
  fc.tuple(which, fc.integer({ min: 4, max: 40 })).map(([board, to]) =>
    command(`set R1 of ${board} to ${to}`, (model, stores) => {
      const from = model.ohms[board];
      stores[board].set('R1', to);
      if (from === to) return;
      model.done.push({ board, from, to });
      model.undone = model.undone.filter((each) => each.board !== board);
      model.ohms[board] = to;
    }),
  ),
  fc.tuple(which, step).map(([board, act]) =>
    command(`${act} on ${board}`, (model, stores) => {
      stores[board][act]();
      take(model, act, (each) => each.board === board);
    }),
  ),
  step.map((act) =>
    command(`${act} on the page`, (model) => {
      onLatest(act);
      take(model, act, ({ board }) => model.inPage[board]);
    }),
  ),
  fc.tuple(which, fc.boolean()).map(([board, inPage]) =>
    command(`${board} ${inPage ? 'comes' : 'goes'}`, (model, stores) => {
      model.inPage[board] = inPage;
      if (inPage) join(elements[board], stores[board]);
      else leave(elements[board]);
    }),
  ),
];

/** What stands for them in the page. */
const elements = [document.createElement('i'), document.createElement('i')] as const;

function two(): [BoardStore, BoardStore] {
  const stores: [BoardStore, BoardStore] = [new BoardStore(), new BoardStore()];
  stores.forEach((store, place) => {
    store.open(parseCircuit(pumpLine));
    join(elements[place === 0 ? 0 : 1], store);
  });
  return stores;
}

describe('the history of a page', () => {
  afterEach(() => elements.forEach(leave));

  it('is one list of acts in their order, whatever is done on which board, and undone there or for the page', () => {
    fc.assert(
      fc.property(fc.commands(commands, { maxCommands: 40 }), (all) => {
        const model: Model = { done: [], undone: [], ohms: [12, 12], inPage: [true, true] };
        fc.modelRun(() => ({ model, real: two() }), all);
      }),
      { numRuns: 300 },
    );
  });

  it('leads back to the start, and forth again to the end', () => {
    const act = fc.tuple(which, fc.integer({ min: 4, max: 40 }));
    fc.assert(
      fc.property(fc.array(act, { maxLength: 20 }), (acts) => {
        const stores = two();
        for (const [board, ohms] of acts) stores[board].set('R1', ohms);
        const settings = (): unknown => stores.map(({ snapshot }) => snapshot?.settings);
        const end = settings();
        acts.forEach(() => onLatest('undo'));
        expect(settings()).to.deep.equal([{}, {}]);
        acts.forEach(() => onLatest('redo'));
        expect(settings()).to.deep.equal(end);
      }),
      { numRuns: 200 },
    );
  });
});

async function withControl(key: string): Promise<void> {
  await sendKeys({ down: 'Control' });
  await sendKeys({ press: key });
  await sendKeys({ up: 'Control' });
}

describe('a page of two boards', () => {
  const page = async (): Promise<{ quay: Bench; pump: Bench; root: HTMLElement }> => {
    const root = await fixture<HTMLElement>(
      html`<div>
        <rheolet-board id="quay" circuit=${pumpLine}></rheolet-board>
        <rheolet-board id="pump" circuit=${pumpLine}></rheolet-board>
        <rheolet-resistor board="pump" of="R1"></rheolet-resistor>
      </div>`,
    );
    const [quay, pump] = [...root.querySelectorAll('rheolet-board')].map((board) => new Bench(board));
    if (!quay || !pump) throw new Error('no boards');
    await Promise.all([quay.board.ready, pump.board.ready]);
    await pump.settled();
    return { quay, pump, root };
  };

  it('undoes and redoes what was done last on any of them; one that is taken away takes its acts with it', async () => {
    const { quay, pump } = await page();
    quay.board.set('R1', 20);
    pump.board.set('S1', 'open');
    quay.board.set('R1', 30);
    RheoletBoard.undo();
    expect([quay.board.settings, pump.board.settings]).to.deep.equal([{ R1: '20' }, { S1: 'open' }]);
    RheoletBoard.undo();
    expect(pump.board.settings).to.deep.equal({});
    RheoletBoard.redo();
    expect(pump.board.settings).to.deep.equal({ S1: 'open' });
    pump.board.remove();
    RheoletBoard.undo();
    expect([quay.board.settings, pump.board.settings]).to.deep.equal([{}, { S1: 'open' }]);
  });

  it('hears Ctrl+Z in a slider in the text for the board that the slider turns, and tells the page', async () => {
    const { quay, pump, root } = await page();
    pump.board.set('R1', 20);
    quay.board.set('R1', 30);
    const inText = root.querySelector<RheoletResistor>(':scope > rheolet-resistor');
    if (!inText) throw new Error('no slider');
    const told: string[] = [];
    root.addEventListener('rheolet-change', ({ detail }) => told.push(`${detail.board} ${detail.value}`));
    sliderOf(inText).focus();
    await withControl('z');
    expect([quay.board.settings, pump.board.settings]).to.deep.equal([{ R1: '30' }, {}]);
    await withControl('y');
    expect(pump.board.settings).to.deep.equal({ R1: '20' });
    expect(told).to.deep.equal(['pump 12', 'pump 20']);
  });

  it('takes one step for one key, also where the slider stands inside the board', async () => {
    const { quay } = await page();
    quay.board.set('R1', 20);
    quay.board.set('R1', 30);
    quay.slider.focus();
    await withControl('z');
    expect(quay.board.settings).to.deep.equal({ R1: '20' });
  });
});
