/** Puts a text on the clipboard; false where the page may not: frames without leave, pages without https. */
export async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
