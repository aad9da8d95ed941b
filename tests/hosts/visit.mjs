import assert from 'node:assert/strict';
import { after, afterEach, before } from 'node:test';
import { launch } from '../run/browser.mjs';
import { serve } from '../run/server.mjs';

/** Every element of the library in the page, in document order, and in the roots inside it that are open. */
const all = `(() => {
  const within = (root) => [...root.querySelectorAll('*')].flatMap((each) => [each, ...(each.shadowRoot ? within(each.shadowRoot) : [])]);
  return within(document).filter(({ localName }) => localName.startsWith('rheolet-'));
})()`;

/** What a page of a host shows, said and asked for. */
export class Visit {
  /** Lines of the console and errors that nobody caught. */
  said = [];
  /** The paths that were asked for. */
  asked = [];

  constructor(tab) {
    this.tab = tab;
    tab.on('console', (message) => this.said.push(`${message.type()}: ${message.text()}`));
    tab.on('pageerror', (error) => this.said.push(String(error)));
    tab.on('request', (request) => this.asked.push(new URL(request.url()).pathname));
  }

  /** The names of the files of dist that were fetched, in order of the alphabet. */
  get fetched() {
    return this.asked
      .filter((path) => path.startsWith('/dist/'))
      .map((path) => path.slice('/dist/'.length))
      .sort();
  }

  /** Waits until `condition`, source text evaluated in the page, holds. */
  async until(condition) {
    await this.tab.waitForFunction(condition, { timeout: 10_000, polling: 20 });
  }

  /** Waits until every element is defined and has drawn, and every board is ready. */
  async settled(frame = this.tab) {
    await frame.waitForFunction(
      `${all}.every((each) => each.matches(':defined') && each.shadowRoot?.childElementCount)`,
      {
        timeout: 10_000,
        polling: 20,
      },
    );
    await frame.evaluate(`Promise.all(${all}.map((each) => each.ready))`);
    await frame.evaluate(
      'new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done))))',
    );
  }

  /** What each element of the page shows, as text: `board: …`. Words for speech are left out. */
  shown(frame = this.tab) {
    return frame.evaluate(
      `${all}.map((each) => each.localName.slice(8) + ': ' + [...each.shadowRoot.querySelectorAll('[part], text')].filter((part) => !part.querySelector('[part], text')).map((part) => part.textContent.trim() || part.value || '').filter(Boolean).join(' ').replace(/\\s+/g, ' '))`,
    );
  }

  /** Holds the page to what every page keeps: a quiet console, no problem, and the ammeter of the lesson at its reading. */
  async isWell(frame = this.tab) {
    await this.settled(frame);
    await frame.waitForFunction(
      `${all}.find((each) => each.localName === 'rheolet-meter').shadowRoot.textContent.includes('1.25')`,
      { timeout: 10_000, polling: 20 },
    );
    assert.deepEqual(this.said, []);
    assert.deepEqual(await this.problems(frame), []);
  }

  /** The sentences with which elements say that something is wrong. */
  problems(frame = this.tab) {
    return frame.evaluate(
      `${all}.flatMap((each) => [...each.shadowRoot?.querySelectorAll('[part=problem], [part=trouble]') ?? []].map((part) => part.textContent.trim())).filter(Boolean)`,
    );
  }
}

/**
 * Serves pages (path → HTML) beside the repository for the tests of a file; gives how to open one, with what to do before
 * it loads, and the address.
 */
export function host({ pages, headers, charset } = {}) {
  let server;
  let browser;
  let tabs = [];
  before(async () => {
    [server, browser] = await Promise.all([serve({ pages, headers, charset }), launch()]);
  });
  afterEach(async () => {
    await Promise.all(tabs.map((tab) => tab.close()));
    tabs = [];
  });
  after(async () => {
    await browser?.close();
    server?.close();
  });
  return {
    get url() {
      return server.url;
    },
    async open(path, prepare = () => undefined) {
      const tab = await browser.newPage();
      tabs.push(tab);
      const visit = new Visit(tab);
      await prepare(tab);
      await tab.goto(path.includes(':') ? path : server.url + path, { waitUntil: 'load' });
      return visit;
    },
  };
}
