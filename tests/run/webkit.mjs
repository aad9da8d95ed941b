// WebKit as Debian has it (packages webkit2gtk-driver and xvfb), as a launcher for the browser runner.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { isExecutable, onPath } from './executable.mjs';
import { freePort } from './free-port.mjs';
import { mouse, pressing, send } from './webdriver.mjs';

const buttons = ['left', 'middle', 'right'];

/** The paths of the driver, of the browser that it drives and of a display for it; undefined if one is missing. */
export function webkit() {
  const [driver, display] = [onPath('WebKitWebDriver'), onPath('Xvfb')];
  if (!driver || !display) return undefined;
  const browser = readdirSync('/usr/lib')
    .flatMap((folder) => ['4.1', '4.0'].map((version) => join('/usr/lib', folder, `webkit2gtk-${version}`)))
    .map((folder) => join(folder, 'MiniBrowser'))
    .find(isExecutable);
  return browser && { driver, display, browser };
}

/** Starts a display without a screen and gives its name, and the process to end. */
async function startDisplay(program) {
  const run = spawn(program, ['-displayfd', '1', '-screen', '0', '1280x1024x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const [number] = await once(run.stdout, 'data');
  return { run, name: `:${String(number).trim()}` };
}

/** One window of WebKit, which runs one test file after the other. */
export function webkitLauncher({ driver, display, browser }) {
  const runs = [];
  const active = new Map(); // session of the runner → its page
  let window;

  async function open() {
    const screen = await startDisplay(display);
    const port = await freePort();
    const env = { ...process.env, DISPLAY: screen.name, WEBKIT_DISABLE_COMPOSITING_MODE: '1' };
    runs.push(spawn(driver, [`--port=${port}`], { stdio: 'ignore', env }), screen.run);
    const base = `http://127.0.0.1:${port}`;
    const isUp = () =>
      send(`${base}/status`, 'GET').then(
        ({ ready }) => ready,
        () => false,
      );
    for (let tries = 0; tries < 100 && !(await isUp()); tries++) await wait(100);
    const options = { binary: browser, args: ['--automation'] };
    const alwaysMatch = { browserName: 'MiniBrowser', 'webkitgtk:browserOptions': options };
    const { sessionId } = await send(`${base}/session`, 'POST', { capabilities: { alwaysMatch } });
    return `${base}/session/${sessionId}`;
  }
  const act = async (actions) => send(`${await window}/actions`, 'POST', { actions });
  const button = (name = 'left') => buttons.indexOf(name);
  const move = (x, y) => ({ type: 'pointerMove', x, y });

  return {
    name: 'WebKit',
    type: 'webdriver', // what the runner's commands call the methods below for
    concurrency: 1,
    async startSession(id, url) {
      window ??= open();
      active.set(id, url);
      await send(`${await window}/url`, 'POST', { url });
    },
    isActive: (id) => active.has(id),
    getBrowserUrl: (id) => active.get(id),
    async stopSession(id) {
      active.delete(id);
      await send(`${await window}/url`, 'POST', { url: 'about:blank' });
      return {};
    },
    async stop() {
      if (window) await send(await window, 'DELETE').catch(() => undefined);
      for (const run of runs) run.kill();
    },
    startDebugSession() {
      throw new Error('WebKit has no debugging here.');
    },
    sendKeys: (id, names) => act(pressing(names)),
    sendMouseMove: (id, x, y) => act(mouse(move(x, y))),
    sendMouseDown: (id, name) => act(mouse({ type: 'pointerDown', button: button(name) })),
    sendMouseUp: (id, name) => act(mouse({ type: 'pointerUp', button: button(name) })),
    sendMouseClick: (id, x, y, name) =>
      act(mouse(move(x, y), ...['pointerDown', 'pointerUp'].map((type) => ({ type, button: button(name) })))),
    resetMouse: async () => send(`${await window}/actions`, 'DELETE'),
  };
}
