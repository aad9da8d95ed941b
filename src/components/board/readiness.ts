/** Whether a board shows what it was given last. */
export class Readiness {
  /** Fulfilled once it does. */
  reached: Promise<void> = Promise.resolve();
  /** It does now. */
  reach: () => void = () => undefined;

  constructor() {
    this.renew();
  }

  /** It was given something else: whoever waits for what was there before is let go. */
  renew(): void {
    this.reach();
    this.reached = new Promise((done) => (this.reach = done));
  }
}
