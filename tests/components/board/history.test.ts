import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import fc from 'fast-check';
import { parseCircuit } from '../../../src/engine/index.ts';
import { BoardStore } from '../../../src/components/board/store.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import { comparing, boardWith, drag, pumpLine, quayLine, text, type Bench } from './bench.ts';

/** What is set, as plain as can be: R1's ohms (12 at the start) and whether S1 is closed (at the start it is). */
interface Set {
  readonly ohms: number;
  readonly closed: boolean;
}

/** A pile of what was set, and where we are in it. */
interface Model {
  pile: Set[];
  place: number;
  /** What is shown while it moves. */
  moving: number | undefined;
}

const start: Set = { ohms: 12, closed: true };
const present = ({ pile, place }: Model): Set => pile[place] ?? start;

function push(model: Model, next: Set): void {
  const { ohms, closed } = present(model);
  model.moving = undefined;
  if (next.ohms === ohms && next.closed === closed) return;
  model.pile = [...model.pile.slice(0, model.place + 1), next];
  model.place += 1;
}

/** A change of place ends what moves; without another place there is nothing to do. */
function go(model: Model, by: 1 | -1): void {
  if (!model.pile[model.place + by]) return;
  model.place += by;
  model.moving = undefined;
}

function agree({ pile, place, moving }: Model, store: BoardStore): void {
  const { ohms, closed } = pile[place] ?? start;
  const settings = { ...(ohms !== 12 && { R1: `${ohms}` }), ...(!closed && { S1: 'open' }) };
  const { snapshot, state } = store;
  expect(snapshot?.settings).to.deep.equal(settings);
  expect([state?.past.length, state?.future.length]).to.deep.equal([place, pile.length - 1 - place]);
  expect(snapshot?.moving).to.equal(moving === undefined ? undefined : 'R1');
  expect(Number(snapshot?.readings.resistance('R1'))).to.equal(moving ?? ohms);
  // 6 V over R1 and 8 Ω, as long as the switch lets it
  const amperes = closed ? 6 / ((moving ?? ohms) + 8) : 0;
  expect(Number(snapshot?.readings.current('L1'))).to.be.closeTo(amperes, 1e-12);
}

class Act implements fc.Command<Model, BoardStore> {
  readonly #name: string;
  readonly #onModel: (model: Model) => void;
  readonly #onStore: (store: BoardStore) => void;
  constructor(name: string, onModel: (model: Model) => void, onStore: (store: BoardStore) => void) {
    this.#name = name;
    this.#onModel = onModel;
    this.#onStore = onStore;
  }
  check(): boolean {
    return true;
  }
  run(model: Model, store: BoardStore): void {
    this.#onModel(model);
    this.#onStore(store);
    agree(model, store);
  }
  toString(): string {
    return this.#name;
  }
}

const ohms = fc.integer({ min: 4, max: 40 });
const acts = [
  ohms.map(
    (to) =>
      new Act(
        `set R1 ${to}`,
        (model) => push(model, { ohms: to, closed: present(model).closed }),
        (store) => store.set('R1', to),
      ),
  ),
  ohms.map(
    (to) =>
      new Act(
        `move R1 ${to}`,
        (model) => (model.moving = to),
        (store) => store.move('R1', to),
      ),
  ),
  fc.boolean().map(
    (closed) =>
      new Act(
        `set S1 ${closed}`,
        (model) => push(model, { ohms: model.moving ?? present(model).ohms, closed }),
        (store) => store.set('S1', closed),
      ),
  ),
  fc.tuple(ohms, fc.boolean()).map(
    ([to, closed]) =>
      new Act(
        `settings ${to} ${closed}`,
        (model) => push(model, { ohms: to, closed }),
        (store) => store.replace({ R1: `${to}`, S1: closed ? 'closed' : 'open' }),
      ),
  ),
  fc.constant(
    new Act(
      'reset',
      (model) => push(model, start),
      (store) => store.reset(),
    ),
  ),
  fc.constant(
    new Act(
      'undo',
      (model) => go(model, -1),
      (store) => store.undo(),
    ),
  ),
  fc.constant(
    new Act(
      'redo',
      (model) => go(model, 1),
      (store) => store.redo(),
    ),
  ),
];

describe('what a board remembers', () => {
  it('is a pile of settings, whatever is done in whatever order', () => {
    const circuit = parseCircuit(pumpLine);
    fc.assert(
      fc.property(fc.commands(acts, { maxCommands: 30 }), (commands) => {
        const setup = (): { model: Model; real: BoardStore } => {
          const real = new BoardStore();
          real.open(circuit);
          return { model: { pile: [start], place: 0, moving: undefined }, real };
        };
        fc.modelRun(setup, commands);
      }),
      { numRuns: 300 },
    );
  });

  it('is told to listeners once a change, and never where nothing changes', () => {
    const store = new BoardStore();
    store.open(parseCircuit(pumpLine));
    let told = 0;
    const stop = store.subscribe(() => (told += 1));
    for (const [act, times] of [
      [(): void => store.set('R1', 12), 0],
      [(): void => store.undo(), 0],
      [(): void => store.redo(), 0],
      [(): void => store.reset(), 0],
      [(): void => store.set('R1', 20), 1],
      [(): void => store.set('R1', '20'), 0],
      [(): void => store.undo(), 1],
      [(): void => store.undo(), 0],
      [(): void => store.redo(), 1],
      [(): void => store.reset(), 1],
    ] as const) {
      told = 0;
      act();
      expect(told, String(act)).to.equal(times);
    }
    stop();
    told = 0;
    store.set('R1', 30);
    expect(told, 'nobody listens any more').to.equal(0);
  });
});

/** All events of the library that reach the page. */
function listen(page: HTMLElement): string[] {
  const heard: string[] = [];
  for (const type of ['rheolet-input', 'rheolet-change'] as const)
    page.addEventListener(type, ({ detail }) =>
      heard.push(`${type} ${detail.id} ${detail.text.replace(/\s/g, ' ')}`),
    );
  page.addEventListener('rheolet-hold', ({ detail }) => heard.push(`rheolet-hold ${detail.held}`));
  page.addEventListener('rheolet-problem', ({ detail }) => heard.push(`rheolet-problem ${detail.code}`));
  return heard;
}

describe('what a program does fires nothing', () => {
  for (const act of [
    (board: RheoletBoard): void => board.set('R1', 20),
    (board: RheoletBoard): void => board.set('S1', 'open'),
    (board: RheoletBoard): void => board.move('R1', 20),
    (board: RheoletBoard): void => board.reset(),
    (board: RheoletBoard): void => board.undo(),
    (board: RheoletBoard): void => board.redo(),
    (board: RheoletBoard): void => board.hold(),
    (board: RheoletBoard): void => board.release(),
    (board: RheoletBoard): void => board.light(['R1']),
    (board: RheoletBoard): void => void (board.settings = { S1: 'open' }),
    (board: RheoletBoard): void => void (board.circuit = quayLine),
    (board: RheoletBoard): void => board.setAttribute('hide', 'readings'),
    (board: RheoletBoard): void => board.setAttribute('course', 'U 2'),
    (board: RheoletBoard): void => board.remove(),
  ])
    it(/board\.[^;]+/.exec(String(act))?.[0] ?? '', async () => {
      const bench = await boardWith(pumpLine);
      bench.board.set('R1', 15);
      bench.board.set('R1', 16);
      bench.board.undo();
      const heard = listen(document.body);
      act(bench.board);
      await bench.settled();
      expect(heard).to.deep.equal([]);
    });
});

describe('what a pupil does is told once', () => {
  const press = async (bench: Bench, part: Element, key: string): Promise<void> => {
    if (part instanceof HTMLElement || part instanceof SVGElement) part.focus();
    await sendKeys({ press: key });
    await bench.settled();
  };
  const rows: readonly (readonly [string, (bench: Bench) => void | Promise<void>, readonly string[]])[] = [
    ['a drag', ({ slider }) => drag(slider, 16, false), ['rheolet-input R1 20 Ω']],
    [
      'a drag that ends',
      ({ slider }) => drag(slider, 16, true),
      ['rheolet-input R1 20 Ω', 'rheolet-change R1 20 Ω'],
    ],
    [
      'an arrow key on the slider',
      (bench) => press(bench, bench.slider, 'ArrowRight'),
      ['rheolet-input R1 13 Ω', 'rheolet-change R1 13 Ω'],
    ],
    ['the switch’s button', (bench) => bench.button('S1').click(), ['rheolet-change S1 open']],
    ['Space on it', (bench) => press(bench, bench.button('S1'), ' '), ['rheolet-change S1 open']],
    [
      'Enter on its symbol',
      (bench) => press(bench, bench.component('S1'), 'Enter'),
      ['rheolet-change S1 open'],
    ],
    ['Space on its symbol', (bench) => press(bench, bench.component('S1'), ' '), ['rheolet-change S1 open']],
    ['Enter on a resistor’s symbol', (bench) => press(bench, bench.component('R1'), 'Enter'), []],
    ['an arrow key in the drawing', (bench) => press(bench, bench.component('R1'), 'ArrowRight'), []],
    ['Hold', (bench) => bench.button('Hold').click(), ['rheolet-hold true']],
    ['Reset with nothing to reset', (bench) => bench.button('Reset').click(), []],
  ];
  for (const [name, act, expected] of rows)
    it(name, async () => {
      const page = await fixture<HTMLElement>(html`<div></div>`);
      const bench = await boardWith(pumpLine);
      page.append(bench.board);
      await bench.settled();
      const heard = listen(page);
      await act(bench);
      expect(heard).to.deep.equal(expected);
    });

  it('a reset of two things tells both', async () => {
    const bench = await boardWith(pumpLine);
    bench.board.settings = { R1: '20', S1: 'open' };
    await bench.settled();
    const heard = listen(bench.board);
    bench.button('Reset').click();
    expect(heard).to.deep.equal(['rheolet-change S1 closed', 'rheolet-change R1 12 Ω']);
  });
});

describe('held readings are compared with', () => {
  for (const [ohms, id, comparisons] of [
    ['12', 'R1', ['the same', 'the same', 'the same', 'the same']],
    [
      '24',
      'R1',
      [
        'rose by 0.900 V, × 1.25',
        'fell by 0.113 A, × 0.625',
        'rose by 12.0 Ω, × 2.00',
        'fell by 0.236 W, × 0.781',
      ],
    ],
    [
      '4',
      'R1',
      [
        'fell by 1.60 V, × 0.556',
        'rose by 0.200 A, × 1.67',
        'fell by 8.00 Ω, × 0.333',
        'fell by 0.0800 W, × 0.926',
      ],
    ],
    [
      '24',
      'L1',
      ['fell by 0.900 V, × 0.625', 'fell by 0.113 A, × 0.625', 'the same', 'fell by 0.439 W, × 0.391'],
    ],
    ['24', 'B1', ['the same', 'fell by 0.113 A, × 0.625', 'fell by 0.675 W, × 0.625']],
    ['24', 'V1', ['fell by 0.900 V, × 0.625']],
  ] as const)
    it(`${id}, with ${ohms} Ω: ${comparisons.join(', ')}`, async () => {
      // 6 V over 12 Ω and 8 Ω: 0.3 A, 3.6 V and 2.4 V; over 24 Ω and 8 Ω: 3/16 A, 4.5 V and 1.5 V; over 4 Ω and 8 Ω: 0.5 A, 2 V and 4 V
      const bench = await boardWith(pumpLine);
      bench.button('Hold').click();
      await comparing(bench);
      bench.board.set('R1', ohms);
      bench.component(id).focus();
      await bench.settled();
      const said = bench.all('[part=caption] .reading').map((each) => /\((.*)\)/.exec(text(each))?.[1] ?? '');
      expect(said).to.deep.equal(comparisons);
    });
});
