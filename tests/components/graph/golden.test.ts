// Pictures of graphs as they were when a person looked at them: `golden/NAME.svg`. Where one changes on purpose, look at what this
// test prints in its place, and write it there.
import { expect } from '@open-wc/testing';
import { bench, pump, quay } from './bench.ts';

const pictures = {
  quay: { circuit: quay, attributes: { of: 'I_A1 I_A2 I_R1' } },
  pump: { circuit: pump, attributes: { of: 'P_R1 Pr_B1' } },
  lamp: { circuit: 'B1 [-9..9 step 0.1] 6 V + A1 + L1 6 V 0.5 A filament', attributes: { against: 'V_L1' } },
  fog: { circuit: 'B1 6 V + R1 10 kΩ + T1 10 kΩ', attributes: { of: 'V_R1 V_T1' } },
  control: { circuit: 'B1 6 V + R1 [10..10000 log] 1000 Ω + R2 470 Ω', attributes: { of: 'V_R1' } },
} as const;

/** A picture as text: no comments of the templates, a line for each element, every twentieth corner of a curve. */
function textOf(svg: Element): string {
  const plain = new XMLSerializer()
    .serializeToString(svg)
    .replace(/<!--.*?-->/gs, '')
    .replace(/\s+/g, ' ');
  const fewer = plain.replace(/ d="(M[^"]*L[^"]*)"/g, (_, path: string) => {
    const points = path.split(/(?=[ML])/);
    return ` d="${points.filter((point, k) => k % 20 === 0 || point.startsWith('M')).join('')}"`;
  });
  return fewer.replace(/>\s*</g, '>\n<').trim();
}

describe('the picture of a graph', () => {
  for (const [name, { circuit, attributes }] of Object.entries(pictures))
    it(`${name} is drawn as it was when it was looked at`, async () => {
      const made = await bench(circuit, attributes);
      made.page.style.inlineSize = '480px';
      await new Promise((seen) => setTimeout(seen, 200));
      await made.element.updateComplete;
      const svg = made.element.shadowRoot!.querySelector('[part=plane] svg, svg')!;
      const response = await fetch(`/tests/components/graph/golden/${name}.svg`);
      const kept = response.ok ? (await response.text()).trim() : '';
      const drawn = textOf(svg);
      if (kept !== drawn) console.log(`GOLDEN ${name}\n${drawn}\nEND`);
      expect(drawn).to.equal(kept);
    });
});
