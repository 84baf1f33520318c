/**
 * Keeps the whole site on the reader's device, and says when a newer text has arrived. Where the browser
 * refuses to keep anything (a private window, an address without https), every page works as it does without.
 */
import { allowWorker } from '../script-policy';
import { button, note } from './notice';

const WORKER = `${import.meta.env.BASE_URL.replace(/\/$/, '')}/sw.js`;

export async function keepOffline(): Promise<void> {
  try {
    const { serviceWorker } = navigator;
    // Who asks their browser to spare data is not sent the whole site unasked.
    const { connection } = navigator as { connection?: { saveData?: boolean } };
    if (!serviceWorker || connection?.saveData) return;
    const kept = await serviceWorker.register(allowWorker('open-time', WORKER));
    // Without one at work already, what has been fetched is what the page shows.
    const offer = () => kept.waiting && kept.active && offerTo(kept, serviceWorker);
    const watch = () => kept.installing?.addEventListener('statechange', offer);
    kept.addEventListener('updatefound', watch);
    watch();
    offer();
  } catch {
    // Refused: nothing is kept, and nothing else changes.
  }
}

function offerTo(kept: ServiceWorkerRegistration, serviceWorker: ServiceWorkerContainer): void {
  if (document.querySelector('.new-text')) return;
  const show = button('Show it', 'button', () => {
    // Another tab may have taken it over meanwhile: then this one only has to be read again.
    if (!kept.waiting) return location.reload();
    serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
    kept.waiting.postMessage({ type: 'SKIP_WAITING' });
  });
  note('New text is ready.', show);
}
