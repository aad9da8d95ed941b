const faults: string[] = [];
const note = (event: ErrorEvent | PromiseRejectionEvent): void => {
  const cause = ('reason' in event ? event.reason : event.error) as Error | undefined;
  faults.push(cause?.stack ?? ('message' in event ? event.message : ''));
};
before(() => {
  addEventListener('error', note);
  addEventListener('unhandledrejection', note);
});
after(() => {
  removeEventListener('error', note);
  removeEventListener('unhandledrejection', note);
});

/** What was thrown in the page and caught by nobody since this was last asked, each once. */
export const thrown = (): readonly string[] => [...new Set(faults.splice(0))];
