import puppeteer from 'puppeteer-core';
import { chromeLauncher } from '@web/test-runner-chrome';
import { chrome } from './chrome.mjs';
import { onPath } from './executable.mjs';
import { webkit, webkitLauncher } from './webkit.mjs';

/** The long-lived Firefox knows no orientation of the screen, which is set with the size of the window: the size alone is. */
async function createPage({ context }) {
  const page = await context.newPage();
  const setViewport = page.setViewport.bind(page);
  page.setViewport = (viewport) =>
    setViewport(viewport).catch((error) => {
      if (!error.message.includes('unknown command')) throw error;
    });
  return page;
}

/** A page that is not in front gets no animation frames, and no keys: one at a time. */
const driven = (launchOptions) => [chromeLauncher({ puppeteer, concurrency: 1, launchOptions, createPage })];

/** A browser that is opened twice, each with every other page: a test mostly waits for frames. */
const twice = (name, pages, launchOptions) =>
  [0, 1].map((half) => ({
    name: `${name} ${half + 1}`,
    files: pages.filter((_, place) => place % 2 === half),
    browsers: driven(launchOptions),
  }));

/**
 * The browsers for the elements' tests, each with the pages it opens, and how to get those that are not present: only
 * Chromium is a must, and installed where it is missing.
 */
export function browsersPresent(pages) {
  const firefox = onPath('firefox-esr', 'firefox');
  const present = webkit();
  return [
    ...twice('Chromium', pages, { executablePath: chrome(), args: ['--no-sandbox'] }),
    ...(firefox ? twice('Firefox', pages, { browser: 'firefox', executablePath: firefox }) : []),
    ...(present
      ? [
          {
            name: 'WebKit',
            files: pages.filter((page) => page.includes('smoke')),
            browsers: [webkitLauncher(present)],
          },
        ]
      : []),
  ];
}
