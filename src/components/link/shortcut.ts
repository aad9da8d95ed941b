/** What Ctrl+Z, Ctrl+Y and Shift+Ctrl+Z ask of a board; nothing where the pupil writes: there they take back letters. */
export function shortcutOf(event: KeyboardEvent): 'undo' | 'redo' | undefined {
  const { ctrlKey, metaKey, shiftKey, defaultPrevented } = event;
  const [target] = event.composedPath();
  const writes = target instanceof Element && target.matches(':read-write');
  if (!(ctrlKey || metaKey) || defaultPrevented || writes) return undefined;
  const key = event.key.toLowerCase();
  if (key === 'y' || (key === 'z' && shiftKey)) return 'redo';
  return key === 'z' ? 'undo' : undefined;
}
