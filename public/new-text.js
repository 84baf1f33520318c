// @ts-check
/**
 * A small notice over the foot of the window: newer text has been fetched. Loaded by components/offline/keep.ts only when
 * the browser has found a newer worker, so that no other visit carries it. Said once by a screen reader, put away
 * with "Later"; nothing is read again unasked.
 */
{
  const { serviceWorker } = navigator;

  /** @param {string} words @param {string} look @param {() => void} press */
  const button = (words, look, press) => {
    const made = document.createElement('button');
    made.type = 'button';
    made.className = look;
    made.textContent = words;
    made.addEventListener('click', press);
    return made;
  };

  /** @param {ServiceWorkerRegistration} kept */
  const offer = (kept) => {
    if (!kept.waiting || !kept.active || document.querySelector('.new-text')) return;
    const box = document.createElement('div');
    box.className = 'new-text';
    box.setAttribute('role', 'status');
    document.body.append(box);
    const show = () => {
      // Another tab may have taken it over meanwhile: then this one only has to be read again.
      if (!kept.waiting) return location.reload();
      serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
      kept.waiting.postMessage({ type: 'SKIP_WAITING' });
    };
    // A reader's software speaks what comes into such a box, not what it is born with.
    setTimeout(() => {
      const text = document.createElement('p');
      text.textContent = 'New text is ready.';
      box.append(
        text,
        button('Show it', 'button', show),
        button('Later', 'button-quiet', () => box.remove()),
      );
    }, 100);
  };

  void serviceWorker.ready.then((kept) => {
    const watch = () => kept.installing?.addEventListener('statechange', () => offer(kept));
    kept.addEventListener('updatefound', watch);
    watch();
    offer(kept);
  });
}
