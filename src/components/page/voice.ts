/** Long enough for a held key to have been let go. */
const pause = 500;

const pending = new Map<object, string>();
let timer: ReturnType<typeof setTimeout> | undefined;

const unseen: Readonly<Record<string, string>> = {
  position: 'fixed',
  'inset-block-start': '0',
  'inset-inline-start': '0',
  'inline-size': '1px',
  'block-size': '1px',
  overflow: 'hidden',
  'clip-path': 'inset(50%)',
  'white-space': 'nowrap',
};

/** The page's one region; another copy of the package may have made it already. */
function region(): HTMLElement {
  const present = document.querySelector<HTMLElement>('[data-rheolet-voice]');
  if (present) return present;
  const made = document.createElement('div');
  made.setAttribute('role', 'status');
  made.lang = 'en';
  made.dataset['rheoletVoice'] = '';
  for (const [name, value] of Object.entries(unseen)) made.style.setProperty(name, value);
  document.body.append(made);
  return made;
}

function utter(): void {
  const sentences = [...pending.values()].join(' ');
  pending.clear();
  region().replaceChildren(sentences);
}

/** Says a sentence in the page's one polite region once things have settled; a speaker's newer sentence replaces its older one. */
export function speak(speaker: object, sentence: string): void {
  pending.set(speaker, sentence);
  clearTimeout(timer);
  timer = setTimeout(utter, pause);
}
