import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../src/components/all.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';

const bridge = 'B1 6 V + ((R1 1 Ω + @p + R2 2 Ω) ∥ (R3 3 Ω + @q + R4 4 Ω)); A1 @p–@q';

async function boardOf(circuit: string): Promise<RheoletBoard> {
  const board = await fixture<RheoletBoard>(html`<rheolet-board circuit=${circuit}></rheolet-board>`);
  await board.ready;
  return board;
}

const groups = (board: RheoletBoard): string[] =>
  [...(board.shadowRoot?.querySelectorAll<SVGGElement>('.component') ?? [])].map(
    ({ dataset }) => dataset['id'] ?? '',
  );

describe('a board whose circuit is not series and parallel throughout', () => {
  it('draws a bridge with its ribbons, and tells it in words', async () => {
    const board = await boardOf(bridge);
    expect(groups(board)).to.have.members(['B1', 'R1', 'R2', 'R3', 'R4', 'A1']);
    expect(board.shadowRoot?.querySelector('.ribbons')?.getAttribute('d')).to.match(/^M/);
    expect(board.shadowRoot?.querySelector('desc')?.textContent).to.contain('a bridge of two branches');
    expect(board.shadowRoot?.querySelector('[part~="table"]')).to.equal(null);
    await expect(board).to.be.accessible();
  });

  it('draws pieces, dead ends and crossings', async () => {
    const lines = [
      'B1 6 V @a–@b; R1 1 Ω @a–@b; R2 2 Ω @a–@c; L1 4 Ω @e–@f',
      'R1 1 Ω @a–@b; R2 1 Ω @a–@c; R3 1 Ω @a–@d; R4 1 Ω @a–@e; R5 1 Ω @b–@c; R6 1 Ω @b–@d; R7 1 Ω @b–@e; R8 1 Ω @c–@d; R9 1 Ω @c–@e; R10 1 Ω @d–@e; ends @a–@b',
    ];
    for (const line of lines) {
      const board = await boardOf(line);
      const ids = board.circuit?.components.map(({ id }) => id) ?? [];
      expect(groups(board)).to.have.members(ids);
    }
    const wires = [...(document.querySelector('rheolet-board')?.shadowRoot?.querySelectorAll('.wire') ?? [])];
    expect(wires.filter((wire) => (wire.getAttribute('d') ?? '').includes('a5 5'))).to.have.length.at.most(1);
  });

  it('is walked through by keys, component after component and back to the first', async () => {
    const board = await boardOf(bridge);
    const focused = (): string | undefined => {
      const { activeElement } = board.shadowRoot ?? {};
      return activeElement instanceof SVGElement ? activeElement.dataset['id'] : undefined;
    };
    board.shadowRoot?.querySelector<SVGGElement>('[data-id="B1"]')?.focus();
    const seen = [focused()];
    for (let i = 0; i < 5; i++) {
      await sendKeys({ press: 'ArrowRight' });
      seen.push(focused());
    }
    expect(seen).to.have.members(groups(board));
    await sendKeys({ press: 'ArrowRight' });
    expect(focused()).to.equal('B1');
    await sendKeys({ press: 'ArrowDown' });
    expect(focused()).not.to.equal('B1');
  });

  it('keeps its drawing while its resistors are set', async () => {
    const board = await boardOf(bridge.replace('R4 4 Ω', 'R4 [1..10] 4 Ω'));
    const places = (): string =>
      [...(board.shadowRoot?.querySelectorAll('.symbol') ?? [])]
        .map((symbol) => symbol.getAttribute('transform'))
        .join();
    const before = places();
    board.set('R4', '6');
    await board.updateComplete;
    expect(places()).to.equal(before);
    expect(Number(board.solution?.current('A1'))).to.be.closeTo(0, 1e-12);
  });
});
