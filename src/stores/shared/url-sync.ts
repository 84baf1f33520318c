/** Keeps the address of the page in step with a calculator, and the job that the other rooms know of. */
import type { ReadableAtom } from 'nanostores';
import type { JobFacts } from '../../core/handover/job-facts';
import type { RoomId } from '../../core/handover/rooms';
import { NOTHING_MORE, openWith, sayFrom } from './bench-job';

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
  const writeSoon = (tail: string) => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      const { pathname, search, hash } = window.location;
      // An address written anew, though it is the same, would hold up whoever goes back or forward just now.
      if (search === `?${tail}`) return;
      const address = `${pathname}?${tail}${hash}`;
      try {
        window.history.replaceState(window.history.state, '', address);
      } catch {
        // A sandboxed frame may not change its address; the link button still gives it.
      }
    }, PAUSE);
  };
  const link = window.location.search;
  const start = openWith(room, link, globalThis.document?.referrer ?? '');
  load(start);
  const say = sayFrom(room, $tail.get(), $more.get());
  if (start !== link && start !== '') writeSoon($tail.get());
  if (start !== '') say($tail.get(), $more.get());
  const stops = [
    $tail.listen((tail) => {
      say(tail, $more.get());
      writeSoon(tail);
    }),
    $more.listen((more) => say($tail.get(), more)),
  ];
  return () => {
    clearTimeout(timer);
    for (const stop of stops) stop();
  };
}
