import { executeServerCommand } from '@web/test-runner-commands';
import { needsChromium } from './chromium.ts';

/** What a screen reader finds on the page, as text; a test that asks for it is skipped outside Chromium. */
export async function accessibilityTree(): Promise<string> {
  needsChromium();
  return JSON.stringify(await executeServerCommand<unknown, object>('a11y-snapshot', {}));
}
