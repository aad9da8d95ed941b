import puppeteer from 'puppeteer-core';
import { chromeLauncher } from '@web/test-runner-chrome';
import { chrome } from './chrome.mjs';
import { onPath } from './executable.mjs';
import { webkit, webkitLauncher } from './webkit.mjs';

const elements = 'tests/components/**/*.test.ts';
const smoke = 'tests/components/smoke/*.test.ts';

/** A page that is not in front gets no animation frames, and no keys: one at a time. */
const driven = (launchOptions) => [chromeLauncher({ puppeteer, concurrency: 1, launchOptions })];

/**
 * The browsers for the elements' tests, each with the tests it runs, and how to get those that are not present: only
 * Chromium is a must, and installed where it is missing.
 */
export function browsersPresent() {
  const firefox = onPath('firefox-esr', 'firefox');
  const present = webkit();
  return [
    {
      name: 'Chromium',
      files: elements,
      browsers: driven({ executablePath: chrome(), args: ['--no-sandbox'] }),
    },
    firefox && {
      name: 'Firefox',
      files: elements,
      browsers: driven({ browser: 'firefox', executablePath: firefox }),
    },
    present && { name: 'WebKit', files: smoke, browsers: [webkitLauncher(present)] },
  ].filter(Boolean);
}
