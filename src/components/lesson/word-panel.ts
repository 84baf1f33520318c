/** A trade word, explained in a small panel beside where it stands, so that nobody loses their place. */
import { adopt } from './adopt';

/** As the build writes it: what the word means, and the lesson that says more. */
export interface PanelWord {
  readonly word: string;
  readonly says: string;
  readonly lesson: string;
  readonly lessonTitle: string;
}

let fetched: Promise<Readonly<Record<string, PanelWord>>> | undefined;

async function entryOf(link: HTMLAnchorElement): Promise<PanelWord> {
  const { hash } = new URL(link.href);
  fetched ??= fetch(new URL('words.json', link.href)).then((answer) => {
    if (!answer.ok) throw new Error(`the words of the glossary: ${answer.status}`);
    return answer.json() as Promise<Readonly<Record<string, PanelWord>>>;
  });
  // what could not be fetched is asked for again the next time
  const words = await fetched.catch((reason: unknown) => {
    fetched = undefined;
    throw reason;
  });
  const entry = words[decodeURIComponent(hash.slice(1))];
  if (!entry) throw new Error(`no word ${hash}`);
  return entry;
}

/** Opens the panel of a word below its link, or above where there is no room. Rejects where the word could not be had. */
export async function showWord(link: HTMLAnchorElement): Promise<void> {
  const panel = panelFor(await entryOf(link), link.href);
  link.after(panel);
  panel.addEventListener('toggle', ({ newState }) => {
    if (newState === 'closed') panel.remove();
  });
  // the browser gives the focus back to where it was when the panel opened
  link.focus();
  panel.showPopover();
  place(panel, link);
  panel.focus();
}

function panelFor({ word, says, lesson, lessonTitle }: PanelWord, glossary: string): HTMLElement {
  const panel = made('div', 'word-panel');
  panel.popover = 'auto';
  panel.tabIndex = -1;
  panel.role = 'dialog';
  panel.ariaLabel = `What “${word}” means`;
  const close = made('button', 'button-quiet', 'Close');
  close.addEventListener('click', () => panel.hidePopover());
  const more = made('p', 'word-panel-more');
  const here = new URL(lesson, location.href).pathname === location.pathname;
  more.append(here ? linked(glossary, 'In the glossary') : linked(lesson, `More in: ${lessonTitle}`), close);
  panel.append(made('p', 'word-panel-word', word), made('p', '', says), more);
  return panel;
}

/** Below the word it explains, and within the page. */
function place(panel: HTMLElement, link: HTMLAnchorElement): void {
  const GAP = 6;
  // a word that is broken over two lines is beside its last part
  const at = [...link.getClientRects()].at(-1)!;
  const { width, height } = panel.getBoundingClientRect();
  const room = document.documentElement.clientWidth - width - 16;
  const below = at.bottom + GAP + height <= innerHeight || at.top < height + GAP;
  panel.style.left = `${scrollX + Math.max(16, Math.min(at.left, room))}px`;
  panel.style.top = `${scrollY + (below ? at.bottom + GAP : at.top - GAP - height)}px`;
}

function made(tag: string, className: string, text = ''): HTMLElement {
  const element = document.createElement(tag);
  element.className = className;
  element.textContent = text;
  return element;
}

function linked(address: string, text: string): HTMLAnchorElement {
  const link = document.createElement('a');
  link.href = address;
  link.textContent = text;
  return link;
}

adopt(`
.word-panel {
  position: absolute;
  inset: auto;
  box-sizing: border-box;
  width: min(22rem, 100vw - 2rem);
  margin: 0;
  padding: var(--s2) var(--s3);
  border: 1px solid var(--line);
  border-radius: 2px;
  background: var(--well);
  color: var(--ink);
  font: 400 1rem/1.5 var(--serif);
  text-align: left;
}
.word-panel p {
  margin: 0 0 var(--s2);
}
.word-panel .word-panel-word {
  font-weight: 600;
}
.word-panel .word-panel-more {
  display: flex;
  flex-wrap: wrap;
  gap: var(--s2);
  align-items: center;
  justify-content: space-between;
  margin: 0;
  font: 400 0.9375rem/1.4 var(--sans);
}
.word-panel a {
  display: inline-block;
  padding-block: 0.6rem;
}
@media print {
  .word-panel {
    display: none;
  }
}
`);
