/** On a phone, a page that opens with a job shows its answer first: the form is folded before anything is drawn. */
const PHONE = '(max-width: 55.99rem)';

if (location.search !== '' && matchMedia(PHONE).matches)
  for (const form of document.querySelectorAll<HTMLDetailsElement>('.job-form')) form.open = false;

export {};
