import { waitUntil } from '@open-wc/testing';

/** Waits for what comes later, however busy the machine is: only what never comes is a failure. */
export const eventually = (holds: () => unknown, message?: string): Promise<void> =>
  waitUntil(holds, message, { timeout: 30_000 });
