/** On a phone, a page that opens with a job shows its answer first: the form is folded before anything is drawn. */
const PHONE = '(max-width: 55.99rem)';

/** Whether something of a job was said in this tab: a calculator that wakes first keeps an empty one. */
function knowsAJob(): boolean {
  try {
    const kept = JSON.parse(window.sessionStorage.getItem('open-time:job') ?? 'null') as { facts?: object } | null;
    return Object.keys(kept?.facts ?? {}).length > 0;
  } catch {
    return false;
  }
}

/** Whether the page was asked for with a link: a calculator that wakes first writes its own into the address. */
function wasAskedWithLink(): boolean {
  const [asked] = performance.getEntriesByType('navigation');
  return new URL(asked?.name || location.href, location.href).search !== '';
}

export {};
if ((wasAskedWithLink() || knowsAJob()) && matchMedia(PHONE).matches)
  for (const form of document.querySelectorAll<HTMLDetailsElement>('.form-fold')) form.open = false;
