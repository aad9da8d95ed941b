import { executeServerCommand } from '@web/test-runner-commands';
import { isChromium, needsChromium } from './chromium.ts';

/** What a page may ask of a reader's settings; names as in Media Queries Level 5. */
export interface Features {
  readonly 'forced-colors'?: 'active' | 'none';
  readonly 'prefers-contrast'?: 'more' | 'less' | 'no-preference';
  readonly 'prefers-color-scheme'?: 'dark' | 'light';
  readonly 'prefers-reduced-motion'?: 'reduce' | 'no-preference';
}

let emulates = false;
afterEach(() => (emulates ? emulateFeatures() : undefined));

/**
 * Sets the reader's settings, and with `print` the medium, until the test ends; without arguments resets them. A test
 * that sets any is skipped outside Chromium.
 */
export async function emulateFeatures(features: Features = {}, media: 'print' | '' = ''): Promise<void> {
  const list = Object.entries(features).map(([name, value]) => ({ name, value: String(value) }));
  emulates = list.length > 0 || media !== '';
  if (emulates) needsChromium();
  if (isChromium) await executeServerCommand<boolean, object>('emulate-features', { media, features: list });
}
