import { execFileSync } from 'node:child_process';
import { isExecutable, onPath } from './executable.mjs';

function find() {
  const named = process.env.CHROME_PATH;
  if (named) return isExecutable(named) ? named : undefined;
  return onPath('google-chrome', 'google-chrome-stable', 'chromium', 'chromium-browser');
}

function install() {
  console.log('No Chromium was found: installing it with apt.');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const apt = (...args) => execFileSync('apt-get', args, { stdio: ['ignore', 'ignore', 'inherit'], env });
  apt('update');
  apt('install', '-y', '--no-install-recommends', 'chromium', 'fonts-dejavu-core');
}

/** The path of Chromium or Chrome: named by CHROME_PATH, on the PATH, or installed where root can do so with apt. */
export function chrome() {
  if (!find() && !process.env.CHROME_PATH && process.getuid?.() === 0) {
    try {
      install();
    } catch {
      // The sentence below says what to do.
    }
  }
  const path = find();
  if (path) return path;
  console.error(
    process.env.CHROME_PATH
      ? `CHROME_PATH names ${process.env.CHROME_PATH}, which cannot be executed.`
      : 'The tests need Chromium or Chrome: install one, or name it in CHROME_PATH.',
  );
  process.exit(1);
}
