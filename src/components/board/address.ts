import { boardTag, type Settings } from '../link/index.ts';
import { boards } from './present.ts';

/*
 * What boards are set to, in the fragment of an address: `#rheolet=quay:R1=20,S1=closed;pump:R1=4`, beside whatever else the page
 * has there, divided by `&`. Names and settings are percent-encoded, a blank is a plus. A board without an id goes by its place
 * among those of its kind: `@1`.
 */

const mark = 'rheolet=';
/** No page's settings need more characters. */
const longest = 8000;

const write = (text: string): string =>
  encodeURIComponent(text.replace(/\p{Surrogate}/gu, '\uFFFD')).replaceAll('%20', '+');
const read = (text: string): string => decodeURIComponent(text.replaceAll('+', ' '));

function nameOf(board: HTMLElement): string {
  if (board.id) return write(board.id);
  const root = board.getRootNode();
  const all = root instanceof Document || root instanceof ShadowRoot ? root.querySelectorAll(boardTag) : [];
  return `@${[...all].filter(({ id }) => !id).findIndex((each) => each === board) + 1}`;
}

/** The two halves of a text, which has the sign once. Throws URIError. */
function halves(text: string, sign: string): readonly [string, string] {
  const [left = '', right, more] = text.split(sign);
  if (right === undefined || more !== undefined) throw new URIError(text);
  return [left, right];
}

/** The parts of a fragment: those of the page, and the one that is ours. */
function partsOf(fragment: string): { readonly others: readonly string[]; readonly ours?: string } {
  const parts = fragment.replace(/^#/, '').split('&').filter(Boolean);
  const ours = parts.find((part) => part.startsWith(mark));
  const others = parts.filter((part) => !part.startsWith(mark));
  return ours === undefined ? { others } : { others, ours: ours.slice(mark.length) };
}

/** What a fragment sets a board to; undefined where it says nothing of it. Throws URIError where it cannot be read. */
export function settingsIn(fragment: string, board: HTMLElement): Settings | undefined {
  const { ours } = partsOf(fragment);
  if (!ours) return; // no board needs to be looked for
  if (ours.length > longest) throw new URIError(mark);
  const means = (name: string): boolean =>
    name === nameOf(board) || (/^[^@]/.test(name) && read(name) === board.id);
  const found = ours.split(';').find((part) => means(part.split(':', 1).join()));
  if (!found) return undefined;
  const settings = halves(found, ':')[1].split(',').filter(Boolean);
  return Object.fromEntries(
    settings.map((each) => {
      const [id, setting] = halves(each, '=');
      return [read(id), read(setting)];
    }),
  );
}

/** The fragment that sets every board of the page to what it is set to now; '' where there is nothing to say. */
export function fragmentNow(fragment: string): string {
  const { others } = partsOf(fragment);
  const set = boards().flatMap(([board, { state }]) => {
    const settings = Object.entries(state?.settings ?? {});
    return settings.length > 0
      ? `${nameOf(board)}:${settings.map((each) => each.map(write).join('=')).join()}`
      : [];
  });
  const parts = set.length > 0 ? [...others, mark + set.join(';')] : others;
  return parts.length > 0 ? `#${parts.join('&')}` : '';
}
