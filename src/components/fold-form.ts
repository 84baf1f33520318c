/** On a phone, a page that opens with a job shows its answer first: the form is folded before anything is drawn. */
const PHONE = '(max-width: 55.99rem)';

/** Whether this tab knows of a job. */
function knowsAJob(): boolean {
  try {
    return window.sessionStorage.getItem('open-time:job') !== null;
  } catch {
    return false;
  }
}

export {};
if ((location.search !== '' || knowsAJob()) && matchMedia(PHONE).matches)
  for (const form of document.querySelectorAll<HTMLDetailsElement>('.form-fold')) form.open = false;
