let running: Mocha.Test | undefined;
beforeEach(function () {
  running = this.currentTest;
});

/** Whether the browser has Chromium's own protocol. */
export const isChromium: boolean = navigator.userAgent.includes('Chrome');

/** Where it has not, ends the test that runs, as skipped. */
export function needsChromium(): void {
  if (!isChromium) running?.skip();
}
