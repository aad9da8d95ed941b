import puppeteer from 'puppeteer-core';
import { chrome } from './chrome.mjs';

const quiet = ['--disable-gpu', '--disable-background-networking', '--disable-component-update'];

/** A headless Chromium that asks the network for nothing by itself. */
export function launch() {
  return puppeteer.launch({ executablePath: chrome(), args: ['--no-sandbox', ...quiet] });
}
