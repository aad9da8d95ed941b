// `node tests/run/contact-sheet.mjs`: pictures of many circuits in .tmp/contact-sheet/, at two widths and in both schemes, to be looked at.
import { mkdirSync } from 'node:fs';
import puppeteer from 'puppeteer-core';
import { chrome } from './chrome.mjs';
import { load } from './load.mjs';

const folder = '.tmp/contact-sheet';
mkdirSync(folder, { recursive: true });
const { pageOf } = await load('tests/engine/schematic/contact-sheet.ts');
const browser = await puppeteer.launch({ executablePath: chrome(), args: ['--no-sandbox', '--disable-gpu'] });
const page = await browser.newPage();
for (const width of [300, 640]) {
  await page.setViewport({ width: width === 300 ? 1300 : 2000, height: 600 });
  for (const scheme of ['light', 'dark']) {
    await page.setContent(pageOf(width, scheme === 'dark'));
    const path = `${folder}/${width}-${scheme}.png`;
    await page.screenshot({ path, fullPage: true });
    console.log(path);
  }
}
await browser.close();
