import { aTimeout, expect } from '@open-wc/testing';
import { register, speak, version } from '../../../src/components/page/index.ts';

describe('the one voice', () => {
  const regions = (): HTMLElement[] => [...document.querySelectorAll<HTMLElement>('[data-rheolet-voice]')];

  it('is one polite region for all speakers, and says the last of what each had to say', async () => {
    await aTimeout(600); // what other tests of this page have said
    regions().forEach((region) => region.remove());
    const [a, b] = [{}, {}];
    speak(a, 'One.');
    speak(b, 'Two.');
    speak(a, 'Three.');
    expect(
      regions()
        .map((region) => region.textContent)
        .join(''),
    ).to.equal('');
    await aTimeout(600);
    expect(regions()).to.have.length(1);
    expect(regions()[0]?.textContent).to.equal('Three. Two.');
    expect(regions()[0]?.getAttribute('role')).to.equal('status');
  });

  it('uses the region that another copy of the package has made', async () => {
    regions().forEach((region) => region.remove());
    const other = document.createElement('div');
    other.dataset['rheoletVoice'] = '';
    document.body.append(other);
    speak({}, 'Heard.');
    await aTimeout(600);
    expect(regions()).to.deep.equal([other]);
    expect(other.textContent).to.equal('Heard.');
  });

  it('takes no room and writes no style attribute of its own', async () => {
    regions().forEach((region) => region.remove());
    const before = document.documentElement.scrollHeight;
    speak({}, 'Heard.');
    await aTimeout(600);
    expect(document.documentElement.scrollHeight).to.equal(before);
    await expect(regions()[0]).to.be.accessible();
  });
});

describe('a tag that is defined twice', () => {
  /** What is said in the console meanwhile. */
  function warnings(act: () => void): string[] {
    const said: string[] = [];
    const warn = console.warn;
    console.warn = (...words: unknown[]) => said.push(words.join(' '));
    act();
    console.warn = warn;
    return said;
  }

  it('keeps its first definition, in silence where the version is the same', () => {
    const First = class extends HTMLElement {};
    const said = warnings(() => {
      register('x-twice', First);
      register('x-twice', class extends HTMLElement {});
    });
    expect(customElements.get('x-twice')).to.equal(First);
    expect(said).to.deep.equal([]);
  });

  it('gets one line in the console where the version is another, and no more for the other tags', () => {
    for (const tag of ['x-other', 'x-another'])
      customElements.define(tag, Object.assign(class extends HTMLElement {}, { version: '9.9.9' }));
    const said = warnings(() => {
      register('x-other', class extends HTMLElement {});
      register('x-another', class extends HTMLElement {});
    });
    expect(said).to.have.length(1);
    expect(said[0]).to.contain('<x-other>').and.contain('9.9.9').and.contain(version);
  });
});

describe('the version', () => {
  it('is that of the package', async () => {
    const response = await fetch('/package.json');
    const { version: published } = (await response.json()) as { version: string };
    expect(version).to.equal(published);
  });
});
