/** The page about embedding: makes the lines for a pasted link, copies them, fits the sample. */
import { listenForHeights } from './height';
import { EMBEDDABLE, readLink, snippetFor } from './snippet';

export function bindEmbed(): void {
  listenForHeights([...document.querySelectorAll<HTMLIFrameElement>('.embed-sample')]);
  const form = document.querySelector<HTMLElement>('.embed-form');
  const input = form?.querySelector('input');
  const lines = form?.querySelector('textarea');
  const error = form?.querySelector('.field-error');
  const button = form?.querySelector('button');
  const status = form?.querySelector('[role="status"]');
  if (!form || !input || !lines || !error || !button || !status) return;
  // Where the page was found counts, not where the build thought it would be.
  const site = new URL(form.dataset['base'] ?? '/', window.location.href).href;
  const names = new Intl.ListFormat('en-GB', { type: 'disjunction' }).format(
    EMBEDDABLE.map(({ page }) => page.slice(1)),
  );
  const atStart = lines.value.replaceAll(new URL(form.dataset['site'] ?? site).origin, new URL(site).origin);
  lines.value = atStart;

  input.addEventListener('input', () => {
    status.textContent = '';
    const read = readLink(input.value, site);
    const wrong = input.value.trim() !== '' && !read;
    error.textContent = wrong ? `Paste a link as a calculator gives it: it begins with ${site} and ${names}.` : '';
    input.setAttribute('aria-invalid', String(wrong));
    if (read) {
      const { calculator, tail } = read;
      const frame = site.replace(/\/$/, '') + calculator.frame;
      lines.value = snippetFor({ title: calculator.title, frame, tail });
    } else if (!wrong) lines.value = atStart;
  });
  button.hidden = !('clipboard' in navigator);
  button.addEventListener('click', async () => {
    try {
      await navigator.clipboard.writeText(lines.value);
      status.textContent = 'Copied.';
    } catch {
      lines.select();
      status.textContent = 'Your browser does not allow copying from here. The lines are marked: copy them by hand.';
    }
  });
}
