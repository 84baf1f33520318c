/** What a teacher copies into a page of their own. */
import { HEIGHT_MESSAGE, HEIGHTS } from './height';

/** A calculator that can be framed: its page here, and the page to frame. */
export interface Embeddable {
  readonly id: 'choose' | 'mix' | 'cover' | 'flat' | 'make' | 'cut';
  /** in a word, for a list */
  readonly does: string;
  readonly title: string;
  readonly page: `/${string}`;
  readonly frame: `/${string}`;
}

export const EMBEDDABLE: readonly Embeddable[] = [
  {
    id: 'choose',
    does: 'choosing',
    title: 'Which adhesive for this paper?',
    page: '/choose/',
    frame: '/embed/choose/',
  },
  { id: 'mix', does: 'mixing', title: 'What goes in the pot, and how much?', page: '/mix/', frame: '/embed/mix/' },
  { id: 'cover', does: 'covering', title: 'How much adhesive will it take?', page: '/cover/', frame: '/embed/cover/' },
  { id: 'flat', does: 'lying flat', title: 'Will it lie flat?', page: '/flat/', frame: '/embed/flat/' },
  { id: 'make', does: 'measuring', title: 'Measures for a book or a box', page: '/make/', frame: '/embed/make/' },
  { id: 'cut', does: 'cutting', title: 'How many sheets, and how to cut them', page: '/cut/', frame: '/embed/cut/' },
];

/** The frame and the script that fits its height; the frame alone works too, at a fixed height. */
export function snippetFor({ title, frame, tail }: { title: string; frame: string; tail: string }): string {
  const { origin } = new URL(frame);
  const address = (tail === '' ? frame : `${frame}?${tail}`).replaceAll('&', '&amp;').replaceAll('"', '&quot;');
  return `<iframe src="${address}" title="${title}" height="1600" loading="lazy" style="width: 100%; border: 0"></iframe>
<script>
  addEventListener('message', (event) => {
    const { type, height } = event.data ?? {};
    if (event.origin !== '${origin}' || type !== '${HEIGHT_MESSAGE}' || !Number.isFinite(height)) return;
    for (const frame of document.querySelectorAll('iframe'))
      if (frame.contentWindow === event.source)
        frame.style.height = Math.min(${HEIGHTS.most}, Math.max(${HEIGHTS.least}, height)) + 'px';
  });
</script>`;
}

/** From a link that a calculator gave to what can be framed; undefined when it is not such a link. */
export function readLink(
  link: string,
  site: string,
): { readonly calculator: Embeddable; readonly tail: string } | undefined {
  const base = site.replace(/\/$/, '');
  for (const calculator of EMBEDDABLE) {
    for (const path of [calculator.page, calculator.frame]) {
      const address = base + path;
      const [before, tail = ''] = link
        .trim()
        .split('#')[0]!
        .split(/\?(.*)/s);
      if (before === address || `${before}/` === address) return { calculator, tail };
    }
  }
  return undefined;
}
