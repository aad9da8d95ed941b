// `npm run shots [-- PART_OF_A_NAME]`: pictures of the demo's pages in .tmp/shots, to be looked at.
import { mkdirSync, readdirSync } from 'node:fs';
import { launch } from './browser.mjs';
import { serve } from './server.mjs';

const widths = [320, 768, 1600];
const folder = '.tmp/shots';
const part = process.argv[2] ?? '';
const pages = readdirSync('demo').filter((file) => file.endsWith('.html') && file.includes(part));

/** Sets media features that the browser's driver does not know by name. */
async function emulate(tab, media, features) {
  const protocol = await tab.createCDPSession();
  const list = Object.entries(features).map(([name, value]) => ({ name, value }));
  await protocol.send('Emulation.setEmulatedMedia', { media, features: list });
  return () => protocol.detach();
}

async function shoot(browser, url, name, { width, media = 'screen', features = {} }) {
  const tab = await browser.newPage();
  await tab.setViewport({ width, height: 900 });
  const reset = await emulate(tab, media, features);
  await tab.goto(url, { waitUntil: 'networkidle0' });
  await tab.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  await tab.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
  if (media === 'print')
    await tab.pdf({ path: `${folder}/${name}.pdf`, format: 'A4', printBackground: true });
  await reset();
  await tab.close();
  console.log(`${folder}/${name}.png`);
}

mkdirSync(folder, { recursive: true });
const server = await serve();
const browser = await launch();
try {
  for (const page of pages) {
    const url = `${server.url}/demo/${page}`;
    const name = page.replace('.html', '');
    for (const width of widths) {
      for (const scheme of ['light', 'dark']) {
        await shoot(browser, url, `${name}-${width}-${scheme}`, {
          width,
          features: { 'prefers-color-scheme': scheme },
        });
      }
    }
    await shoot(browser, url, `${name}-forced-colors`, {
      width: 768,
      features: { 'forced-colors': 'active' },
    });
    await shoot(browser, url, `${name}-print`, { width: 794, media: 'print' }); // A4 at 96 px to the inch
  }
} finally {
  await browser.close();
  server.close();
}
