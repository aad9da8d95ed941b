/**
 * The command `emulate-features` for tests in Chromium: sets the media features (`[{name: 'forced-colors', value:
 * 'active'}]`; an empty list resets them) and the medium (`print`) through the browser's own protocol, since the
 * runner's `emulateMedia` knows neither forced colours nor contrast.
 */
export function emulateFeaturesPlugin() {
  const protocols = new WeakMap(); // one for each page: what one session has set, another cannot reset
  return {
    name: 'emulate-features',
    async executeCommand({ command, payload, session }) {
      if (command !== 'emulate-features') return undefined;
      const page = session.browser.getPage(session.id);
      if (!protocols.has(page)) protocols.set(page, await page.createCDPSession());
      await protocols.get(page).send('Emulation.setEmulatedMedia', payload);
      return true;
    },
  };
}
