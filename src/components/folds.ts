/** A link to a part that is folded opens it, with every fold around it; paper has all of them open. */
const FOLDS = 'main details.fold';

function openTarget(): void {
  const target = document.getElementById(location.hash.slice(1));
  let folded = target?.closest('details');
  if (!target || !folded) return;
  for (; folded; folded = folded.parentElement?.closest('details')) folded.open = true;
  target.scrollIntoView();
}

/** Browsers that cannot open a fold by a style print it as it stands. */
function openOnPaper(): void {
  const shut = [...document.querySelectorAll<HTMLDetailsElement>(`${FOLDS}:not([open])`)];
  for (const fold of shut) fold.open = true;
  addEventListener('afterprint', () => shut.forEach((fold) => (fold.open = false)), { once: true });
}

function offerToOpenAll(button: HTMLButtonElement): void {
  const folds = () => [...document.querySelectorAll<HTMLDetailsElement>(FOLDS)];
  const label = () => {
    button.textContent = folds().every(({ open }) => open) ? 'Close all' : 'Open all';
  };
  button.hidden = false;
  button.addEventListener('click', () => {
    const open = button.textContent === 'Open all';
    for (const fold of folds()) fold.open = open;
    label();
  });
  // a fold that is opened by hand, by a link or by a search tells of it here; it does not bubble
  document.addEventListener('toggle', label, true);
  label();
}

openTarget();
addEventListener('hashchange', openTarget);
addEventListener('beforeprint', openOnPaper);
document.querySelectorAll<HTMLButtonElement>('[data-open-all]').forEach(offerToOpenAll);

export {};
