/** The page about use without a network: how much this device has kept, the whole of it when asked, and which pages. */
interface Told {
  /** files, of those that are not kept at the first visit */
  readonly kept: number;
  readonly of: number;
  /** addresses of the pages among them */
  readonly pages?: readonly string[];
  readonly ended?: boolean;
  readonly failed?: boolean;
}

/** Asks the worker that answers for this page, and hears all that it has to tell. */
function ask(type: 'WHAT_IS_KEPT' | 'KEEP_WHOLE', hear: (told: Told) => void): void {
  void navigator.serviceWorker.ready.then(({ active }) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => hear(data as Told);
    active?.postMessage({ type }, [port2]);
  });
}

const found = <E extends HTMLElement = HTMLElement>(name: string) => document.querySelector<E>(`[data-${name}]`)!;

function show({ kept, of, pages, ended, failed }: Told): void {
  const says = found('keep-says');
  const button = found<HTMLButtonElement>('keep-whole');
  const isWhole = kept === of;
  button.hidden = isWhole;
  if (failed) says.textContent = 'The browser did not keep it: there may be too little room. What was kept stays.';
  else if (isWhole) says.textContent = 'This device has kept the whole site.';
  else if (ended)
    says.textContent = `${kept} of ${of} files are kept. The rest could not be fetched: press again to go on.`;
  else says.textContent = button.disabled ? `${kept} of ${of} files are kept.` : '';
  if (ended || failed) button.disabled = false;
  if (pages) list(pages);
}

/** The pages that were kept as they were opened, by the ends of their addresses. */
function list(pages: readonly string[]): void {
  const base = new URL(import.meta.env.BASE_URL, location.href).href;
  const items = [...pages].sort().map((address) => {
    const link = document.createElement('a');
    link.href = address;
    link.textContent = address.slice(base.length).replace(/\/$/, '').replaceAll('/', ' / ').replaceAll('-', ' ');
    const item = document.createElement('li');
    item.append(link);
    return item;
  });
  found('kept-pages').replaceChildren(...items);
  found('kept-list').hidden = items.length === 0;
}

/** Where the worker shows this page in the place of another, it says so. */
function sayWhatIsMissing(): void {
  const own = new URL(`${import.meta.env.BASE_URL}without-a-network/`, location.href).pathname;
  found('missing').hidden = location.pathname === own;
}

sayWhatIsMissing();
try {
  ask('WHAT_IS_KEPT', (told) => {
    found('no-keep').hidden = true;
    found('keep').hidden = false;
    show(told);
  });
  found('keep-whole').addEventListener('click', () => {
    found<HTMLButtonElement>('keep-whole').disabled = true;
    found('keep-says').textContent = 'Fetching. You can go on reading.';
    ask('KEEP_WHOLE', show);
  });
} catch {
  // a browser that keeps nothing has nothing to show
}
