/** What a teacher copies into a page of their own. */
import { ROOMS } from '../../core/handover/rooms';
import { HEIGHT_MESSAGE, HEIGHTS } from './height';

/** A calculator that can be framed: its page here, and the page to frame. */
export interface Embeddable {
  readonly id: 'choose' | 'mix' | 'cover' | 'flat' | 'make' | 'cut' | 'paper' | 'bench' | 'workshop';
  /** in a word, for a list */
  readonly does: string;
  readonly title: string;
  readonly page: `/${string}`;
  readonly frame: `/${string}`;
}

export const EMBEDDABLE: readonly Embeddable[] = [
  { id: 'choose', does: 'choosing', title: ROOMS.choose.name, page: '/choose/', frame: '/embed/choose/' },
  { id: 'mix', does: 'mixing', title: ROOMS.mix.name, page: '/mix/', frame: '/embed/mix/' },
  { id: 'cover', does: 'covering', title: ROOMS.cover.name, page: '/cover/', frame: '/embed/cover/' },
  { id: 'flat', does: 'lying flat', title: ROOMS.flat.name, page: '/flat/', frame: '/embed/flat/' },
  { id: 'make', does: 'measuring a book or a box', title: ROOMS.make.name, page: '/make/', frame: '/embed/make/' },
  { id: 'cut', does: 'cutting', title: ROOMS.cut.name, page: '/cut/', frame: '/embed/cut/' },
  { id: 'paper', does: 'measuring paper', title: ROOMS.measure.name, page: '/paper/', frame: '/embed/paper/' },
  { id: 'bench', does: 'measuring a bench', title: ROOMS.bench.name, page: '/bench/', frame: '/embed/bench/' },
  { id: 'workshop', does: 'planning a class', title: ROOMS.class.name, page: '/workshop/', frame: '/embed/workshop/' },
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
