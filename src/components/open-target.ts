/** A link to a part that is folded opens it. */
function openTarget(): void {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  const folded = target?.closest('details');
  if (!target || !folded) return;
  folded.open = true;
  target.scrollIntoView();
}

openTarget();
addEventListener('hashchange', openTarget);

export {};
