/**
 * The search of the site's own pages. The index and what reads it are fetched when the reader first types or
 * comes with a question, not before.
 */
import { allowWorker } from './policy';

interface Piece {
  readonly text: string;
  readonly marked: boolean;
}
interface Page {
  readonly url: string;
  readonly excerpt: string;
  readonly meta: { readonly title?: string; readonly kind?: string };
}
interface Index {
  options(options: { baseUrl: string; excerptLength: number }): Promise<void>;
  filters(): Promise<{ kind?: Record<string, number> }>;
  search(
    words: string,
    options: { filters: { kind?: string } },
  ): Promise<{ results: readonly { data(): Promise<Page> }[] }>;
}

/** Results shown at a time. */
const SHOWN = 10;
const PAUSE = 200;
const ENTITIES: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', '#39': "'", '#x27': "'" };

/** An excerpt as plain pieces: it arrives escaped, with <mark> about the words that were found. */
export function pieces(excerpt: string): Piece[] {
  const plain = (text: string) =>
    text.replace(/<[^>]*>/g, '').replace(/&(#?\w+);/g, (whole, name: string) => ENTITIES[name] ?? whole);
  return excerpt
    .split(/(<mark>.*?<\/mark>)/s)
    .filter((part) => part !== '')
    .map((part) => ({ text: plain(part), marked: part.startsWith('<mark>') }));
}

/** What to say of the number found. */
export function told(count: number, words: string): string {
  if (count === 0) return `Nothing found for “${words}”. Try one word, or another word for the same thing.`;
  return count === 1 ? `One page found for “${words}”.` : `${count} pages found for “${words}”.`;
}

function entry({ url, excerpt, meta }: Page): HTMLLIElement {
  const item = document.createElement('li');
  const link = document.createElement('a');
  link.href = url;
  link.textContent = meta.title ?? url;
  const kind = document.createElement('span');
  kind.className = 'label';
  kind.textContent = ` ${meta.kind ?? ''}`;
  const text = document.createElement('p');
  for (const piece of pieces(excerpt)) {
    const node = document.createElement(piece.marked ? 'mark' : 'span');
    node.textContent = piece.text;
    text.append(node);
  }
  item.append(link, kind, text);
  return item;
}

export function bindSearch(form: HTMLFormElement): void {
  const input = form.querySelector<HTMLInputElement>('input[type="search"]');
  const kinds = form.querySelector('select');
  const status = form.querySelector('[role="status"]');
  const list = document.querySelector('.found');
  const more = document.querySelector<HTMLButtonElement>('.found-more');
  const base = form.dataset['base'] ?? '/';
  if (!input || !kinds || !status || !list || !more) return;

  let opening: Promise<Index> | undefined;
  const open = () => (opening ??= load(base, kinds));
  let asked = 0;
  let waiting: readonly { data(): Promise<Page> }[] = [];

  const show = async (turn: number) => {
    const next = waiting.slice(0, SHOWN);
    waiting = waiting.slice(SHOWN);
    const pages = await Promise.all(next.map((result) => result.data()));
    if (turn !== asked) return;
    list.append(...pages.map(entry));
    more.hidden = waiting.length === 0;
  };
  const search = async () => {
    const turn = (asked += 1);
    const words = input.value.trim();
    list.replaceChildren();
    more.hidden = true;
    if (words === '') {
      status.textContent = '';
      return;
    }
    status.textContent = 'Searching.';
    try {
      const index = await open();
      const { results } = await index.search(words, { filters: kinds.value === '' ? {} : { kind: kinds.value } });
      if (turn !== asked) return;
      status.textContent = told(results.length, words);
      waiting = results;
      await show(turn);
    } catch {
      opening = undefined;
      if (turn === asked)
        status.textContent =
          'The search could not be loaded. Check the connection and try again, or use the lists below.';
    }
  };

  let timer: ReturnType<typeof setTimeout> | undefined;
  input.addEventListener('input', () => {
    clearTimeout(timer);
    timer = setTimeout(search, PAUSE);
  });
  kinds.addEventListener('change', search);
  more.addEventListener('click', () => void show(asked));
  // a question in the address, from the form on another page or from a link
  const question = new URLSearchParams(location.search).get('q');
  if (question) input.value = question;
  if (input.value !== '') void search();
  // who comes by a link of this site's own comes to type
  if (location.hash === `#${input.id}`) input.focus();
}

/** a policy can be made only once, a failed search tried again */
let allowed = false;

async function load(base: string, kinds: HTMLSelectElement): Promise<Index> {
  if (!allowed) allowWorker(`${base}pagefind/pagefind-worker.js`);
  allowed = true;
  const address = `${base}pagefind/pagefind.js`;
  const index = (await import(/* @vite-ignore */ address)) as Index;
  await index.options({ baseUrl: base, excerptLength: 24 });
  const { kind = {} } = await index.filters();
  for (const [name, count] of Object.entries(kind).sort(([a], [b]) => a.localeCompare(b, 'en-GB')))
    kinds.add(new Option(`${name} (${count})`, name));
  return index;
}
