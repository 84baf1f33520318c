/** Keeps the address of the page in step with a calculator, and the job that the other rooms know of. */
import type { ReadableAtom } from 'nanostores';
import type { JobFacts } from '../../core/handover/job-facts';
import type { RoomId } from '../../core/handover/rooms';
import { comeBackTo, NOTHING_MORE, openWith, sayFrom } from './bench-job';

/** Browsers refuse more than about a hundred changes of address in half a minute. */
const PAUSE = 300;

/**
 * Reads the link once, or without one what was said of the job so far; then writes every later change with
 * `replaceState`, after a pause in the typing. `$more` is what this room tells the others besides what its link says.
 * Returns a function that stops it.
 */
export function syncAddress(
  room: RoomId,
  load: (tail: string) => void,
  $tail: ReadableAtom<string>,
  $more: ReadableAtom<JobFacts> = NOTHING_MORE,
): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const write = () => {
    timer = undefined;
    const { pathname, search, hash } = window.location;
    const tail = $tail.get();
    // While the answer to the link is still worked out, the link stays.
    if (tail === unread) return;
    // An address written anew, though it is the same, would hold up whoever goes back or forward just now.
    if (search === `?${tail}`) return;
    const address = `${pathname}?${tail}${hash}`;
    try {
      window.history.replaceState(window.history.state, '', address);
    } catch {
      // A sandboxed frame may not change its address; the link button still gives it.
    }
  };
  const writeSoon = () => {
    clearTimeout(timer);
    timer = setTimeout(write, PAUSE);
  };
  // Whoever goes on before the pause is over finds all of it on the way back.
  const onClick = ({ target }: Event) => {
    if (timer === undefined || !(target as Element).closest?.('a')) return;
    clearTimeout(timer);
    write();
  };
  // A page that the browser kept whole comes back as it was; what was said elsewhere meanwhile is laid over it.
  const onShow = (event: PageTransitionEvent) => {
    const since = event.persisted ? comeBackTo(room) : '';
    if (since !== '') load(since);
  };
  window.addEventListener('click', onClick, true);
  window.addEventListener('pageshow', onShow);
  const link = window.location.search;
  const start = openWith(room, link, globalThis.document?.referrer ?? '');
  const before = $tail.get();
  load(start);
  // Where the answer takes its time, the tail is still that of the job before it.
  let unread = start !== '' && $tail.get() === before ? before : undefined;
  const say = sayFrom(room, $tail.get(), $more.get());
  if (start !== link && start !== '') writeSoon();
  const tailNow = () => (unread === undefined ? $tail.get() : start.replace(/^\?/, ''));
  if (start !== '') say(tailNow(), $more.get());
  const stops = [
    $tail.listen((tail) => {
      unread = undefined;
      say(tail, $more.get());
      writeSoon();
    }),
    $more.listen((more) => say(tailNow(), more)),
  ];
  return () => {
    clearTimeout(timer);
    window.removeEventListener('click', onClick, true);
    window.removeEventListener('pageshow', onShow);
    for (const stop of stops) stop();
  };
}
