import { expect } from '@open-wc/testing';
import { settled } from '../beside-board.ts';
import { bench, box, button, fill, heard, press, seen } from './bench.ts';
import { eventually } from '../eventually.ts';

describe('a worked solution', () => {
  it('stands there whole where the page says so: what is given, what is asked, the steps, the answer', async () => {
    const made = await bench({ of: 'I_R1', mode: 'whole' }, 'B1 12 V r 1 Ω + R1 5 Ω');
    expect(made.texts('[part=given] .heard')).to.deep.equal([
      'e.m.f. of B1 equals 12.0 V',
      'internal resistance of B1 equals 1.00 Ω',
      'resistance of R1 equals 5.00 Ω',
    ]);
    expect(made.texts('[part=find] .heard')).to.deep.equal(['current through R1']);
    expect(made.texts('[part=why]')).to.deep.equal([
      'The internal resistance is in series with the rest of the circuit.',
      'Round the whole circuit, the e.m.f. is current times all the resistance.',
      'The same current flows through R1 and B1.',
    ]);
    expect(heard(made).slice(3, 7)).to.deep.equal([
      'e.m.f. of B1 equals current through B1 times resistance of the whole loop',
      'current through B1 equals e.m.f. of B1 divided by resistance of the whole loop',
      'current through B1 equals 12.0 V divided by 6.00 Ω',
      'equals 2.00 A',
    ]);
    expect(made.all('[part~=answer]').length).to.equal(1);
    expect(made.all('button').length).to.equal(0);
  });

  it('is real MathML', async () => {
    const made = await bench({ of: 'I_R3', mode: 'whole' });
    const maths = made.all('math');
    expect(maths.length).to.be.above(20);
    for (const each of made.all('math, math *'))
      expect(each.namespaceURI, each.localName).to.equal('http://www.w3.org/1998/Math/MathML');
    expect(made.all('mfrac').length).to.be.above(5);
    expect(made.all('msub > mtext').some(({ textContent }) => textContent === 'R2∥(R3+R4)')).to.equal(true);
  });

  it('follows the board, with its course', async () => {
    const made = await bench({ of: 'V_R1', mode: 'whole' });
    expect(made.texts('[part~=answer] .heard')).to.deep.equal(['equals 6.00 V']);
    made.board.set('R1', '8');
    await settled();
    expect(made.texts('[part~=answer] .heard')).to.deep.equal(['equals 8.00 V']);
    await made.show('B1 12 V + R1 5 Ω', { course: 'voltage U 2 comma' });
    expect(made.texts('[part~=answer] .heard')).to.deep.equal(['equals 12 V']);
    expect(made.texts('[part=symbols] .heard').at(-1)).to.equal('voltage across R1 equals voltage across B1');
    expect(made.all('mi').some(({ textContent }) => textContent === 'V')).to.equal(false);
  });

  it('sets up equations and solves them where a bridge needs it, each with its number', async () => {
    const bridge = 'B1 24 V + ((R1 150 Ω + @l + R4 300 Ω) ∥ (R2 50 Ω + @q + R5 250 Ω)); R3 100 Ω @q–@l';
    const made = await bench({ of: 'I_R3', mode: 'whole' }, bridge);
    await eventually(() => made.all('[part=note]').length > 1, 'what solves such equations has come');
    expect(made.texts('[part=note]')[1]).to.equal(
      'IR1 is counted through R1 from the + end of B1 and R2 to R4 and R3.',
    );
    expect(made.all('[part=numbers]').length).to.equal(10);
    expect(
      made
        .texts('[part=numbers] .heard')
        .slice(0, 2)
        .map((text) => text.trim()),
    ).to.deep.equal([
      'current through R5 equals current through R2 minus current through R3',
      'equation (1)',
    ]);
    expect(made.texts('[part~=answer] .heard')).to.deep.equal(['equals 0.0166 A']);
  });

  it('has no number to be filled in where a step gives an equation', async () => {
    const cells = 'B1 6 V r 1 Ω + @a + R1 10 Ω + @b; B2 4.5 V r 0.5 Ω @b–@a';
    const made = await bench({ of: 'I_B2', mode: 'gaps' }, cells);
    expect(made.texts('[part=count]')[0]).to.match(/^5 of 6/);
    await fill(made, '-0.677');
    expect(made.texts('[part=count]')[0]).to.match(/^6 of 6/);
  });

  it('starts from what the page gives', async () => {
    const made = await bench({
      of: 'U_R2',
      given: 'I_R1 = 1,50 A; R_R2 = 0.006 kΩ; V_R4 = 2.0 V; R_R4',
      mode: 'whole',
    });
    expect(made.texts('[part=given] .heard')).to.include('current through R1 equals 1.50 A');
    expect(made.texts('[part=reason]')).to.deep.equal([]);
    expect(made.texts('[part~=answer] .heard')[0]).to.equal('equals 6.00 V');
  });

  it('keeps to the rules of the class', async () => {
    const made = await bench({ of: 'R_total', mode: 'whole' }, 'B1 12 V + (R1 6 Ω ∥ R2 12 Ω)');
    expect(made.texts('[part=why]')[0]).to.contain('the reciprocals');
    made.element.lesson = '14-16';
    await settled();
    expect(made.everything).not.to.contain('reciprocals of the');
    expect(made.texts('[part=why]').at(-1)).to.contain('current times resistance');
    made.element.lesson = 'product-over-sum';
    await settled();
    expect(made.texts('[part=why]')[0]).to.contain('the product of their resistances over the sum');
  });
});

describe('where there is no solution, it is said why', () => {
  const rows = [
    [{ of: 'I_R3', given: 'R_R3' }, 'reason', 'To find IR3, VR3 is missing.'],
    [
      { of: 'I_R3', given: 'V_R1 = 6 V; R_R1 = 4 Ω; I_R1 = 2 A' },
      'reason',
      'VR1, RR1 and IR1 cannot all be right: they disagree.',
    ],
    [{ of: 'E_B1' }, 'reason', 'There is nothing to work out: what is asked is given.'],
    [{ of: 'I_R9' }, 'problem', '“IR9” is not a quantity of this circuit; did you mean IR1?'],
    [{ of: '' }, 'problem', 'Say which quantity is to be worked out, by of="…", such as IB1.'],
    [
      { of: 'I_R3', given: 'R_R3 eight' },
      'problem',
      '“RR3 eight” cannot be read as something given; write a quantity and its value, such as IR1 = 0.5 A.',
    ],
    [{ of: 'I_R3', mode: 'step' }, 'problem', '“step” is not a mode; did you mean steps?'],
    [{ of: 'I_R3', lesson: '16-19' }, 'problem', '“16-19” is not a lesson; did you mean 16-18?'],
  ] as const;
  for (const [attributes, part, sentence] of rows)
    it(sentence, async () => {
      const made = await bench(attributes);
      expect(made.part(part)).to.equal(sentence);
    });

  it('of a bridge, a fault, and a circuit that is open', async () => {
    const made = await bench({ of: 'V_S1' }, 'B1 6 V + S1 open + R1 3 Ω + S2 open');
    expect(made.part('reason')).to.contain('S1 and S2');
    made.element.of = 'I_R1';
    made.element.lesson = '14-16';
    await made.show('B1 6 V + ((R1 1 Ω + @p + R2 2 Ω) ∥ (R3 3 Ω + @q + R4 4 Ω)); R5 5 Ω @p–@q');
    expect(made.part('reason')).to.contain('this rule is needed. Round the loop of R1');
  });

  it('and the page is told', async () => {
    const made = await bench();
    const told: string[] = [];
    made.page.addEventListener('rheolet-problem', ({ detail }) => void told.push(detail.code));
    made.element.of = 'I_R9';
    await settled();
    made.element.of = 'I_R3';
    await settled();
    expect(told).to.deep.equal(['no such quantity']);
  });

  it('nothing is told that the pupil is to find or predict', async () => {
    const made = await bench({ of: 'I_R1', mode: 'whole' }, 'B1 6 V + R1 7 Ω hidden + R2 5 Ω');
    expect(made.everything).not.to.contain('7.00');
    expect(made.part('reason')).to.contain('is missing');
    await made.show('B1 6 V + R1 3 Ω', { hide: 'readings' });
    expect(made.part('reason')).to.equal('The readings are covered: predict first, then uncover them.');
    expect(made.everything).not.to.contain('2.00');
    made.element.mode = 'steps';
    await settled();
    expect(made.everything, 'not even for paper').not.to.contain('2.00');
  });
});

describe('steps are uncovered one by one', () => {
  it('by a button, and covered again', async () => {
    const made = await bench();
    expect(seen(made).length).to.equal(0);
    await press(made, 'Next step', 2);
    expect([seen(made).length, made.part('count')]).to.deep.equal([2, '2 of 8']);
    await press(made, 'Back');
    expect([seen(made).length, made.part('count')]).to.deep.equal([1, '1 of 8']);
    await press(made, 'Next step', 7);
    expect(button(made, 'Next step').disabled).to.equal(true);
  });

  it('and stay so while only numbers change, not where the way becomes another', async () => {
    const made = await bench();
    await press(made, 'Next step', 3);
    made.board.set('R1', '8');
    await settled();
    expect(seen(made).length).to.equal(3);
    made.board.set('R4', 'broken');
    await settled();
    expect(seen(made).length).to.equal(0);
  });

  it('each with an event', async () => {
    const made = await bench({ of: 'I_R3', board: 'quay' });
    const told: object[] = [];
    made.page.addEventListener('rheolet-reveal', ({ detail }) => void told.push(detail));
    await press(made, 'Next step');
    await press(made, 'Back');
    expect(told).to.deep.equal([
      { board: 'quay', of: 'I_R3', shown: 1, steps: 8 },
      { board: 'quay', of: 'I_R3', shown: 0, steps: 8 },
    ]);
  });
});

describe('hints say more and more', () => {
  it('where to look, which rule, the equation, with numbers, the number', async () => {
    const made = await bench({ of: 'I_R1', mode: 'hints' }, 'B1 12 V + R1 4 Ω');
    const told = (): number => made.all('[part=step] [part]').filter((each) => each.checkVisibility()).length;
    expect(told()).to.equal(0);
    await press(made, 'Next hint');
    expect([made.part('look'), told()]).to.deep.equal(['Look at B1 and R1.', 1]);
    await press(made, 'Next hint');
    expect(told()).to.equal(2);
    expect(heard(made)).to.deep.equal([]);
    await press(made, 'Next hint');
    expect(heard(made).at(-1)).to.equal('current through B1 equals e.m.f. of B1 divided by resistance of R1');
    await press(made, 'Next hint');
    expect(heard(made).at(-1)).to.equal('current through B1 equals 12.0 V divided by 4.00 Ω');
    await press(made, 'Next hint');
    expect([heard(made).at(-1), made.part('count')]).to.deep.equal(['equals 3.00 A', '1 of 2']);
    await press(made, 'Back');
    expect(heard(made).at(-1)).not.to.equal('equals 3.00 A');
  });
});

describe('numbers are filled in', () => {
  it('one after another; a mistake gets a sentence', async () => {
    const made = await bench({ of: 'I_R1', mode: 'gaps', board: 'quay' }, 'B1 12 V + R1 5 Ω');
    const told: object[] = [];
    made.page.addEventListener('rheolet-answer', ({ detail }) => void told.push(detail));
    expect(box(made).ariaLabel).to.equal('current through B1 in A');
    expect(made.everything).not.to.contain('2.40 A equals');
    await fill(made, '24');
    expect(made.part('mistake')).to.contain('the point is in the wrong place');
    expect(box(made).getAttribute('aria-invalid')).to.equal('true');
    expect(made.all(`#${box(made).getAttribute('aria-describedby')}`).length).to.equal(1);
    await fill(made, '2,4');
    expect(made.part('mistake')).to.equal('');
    expect(made.part('count')).to.equal('1 of 2');
    expect(made.element.shadowRoot!.activeElement, 'the next box has the focus').to.equal(box(made));
    await fill(made, '2.40 A');
    expect(box(made)).to.equal(undefined);
    expect(made.texts('[part~=answer] .heard')).to.deep.equal(['equals 2.40 A']);
    expect(told).to.deep.equal([
      { board: 'quay', quantity: 'I_B1', value: 2.4, text: '24', right: false },
      { board: 'quay', quantity: 'I_B1', value: 2.4, text: '2,4', right: true },
      { board: 'quay', quantity: 'I_R1', value: 2.4, text: '2.40 A', right: true },
    ]);
  });

  it('or shown', async () => {
    const made = await bench({ of: 'I_R1', mode: 'gaps' }, 'B1 12 V + R1 5 Ω');
    await press(made, 'Show the number', 2);
    expect(made.part('count')).to.equal('2 of 2');
    expect(button(made, 'Show the number').disabled).to.equal(true);
  });

  it('nothing that is to be filled in stands there already', async () => {
    const made = await bench({ of: 'I_R3', mode: 'gaps' });
    for (let step = 0; step < 8; step += 1) {
      const [now] = seen(made).slice(-1);
      expect(now!.querySelector('input'), `${step}`).not.to.equal(null);
      expect(now!.querySelectorAll('[part~=value]').length, `${step}`).to.equal(0);
      await press(made, 'Show the number');
    }
    expect(made.all('input').length).to.equal(0);
  });
});
