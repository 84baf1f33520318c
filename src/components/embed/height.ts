/** How a framed calculator and the page around it agree on its height: one message, one number, nothing else. */

export const HEIGHT_MESSAGE = 'open-time:height';
/** What a page around a frame will set: a number outside these is a mistake. */
export const HEIGHTS = { least: 200, most: 20_000 } as const;

/** In the frame: tells the page around it how high this one is, at once and whenever that changes. */
export function tellHeight(): void {
  if (window.parent === window) return;
  // Any page may frame this one, so the message goes to any; it holds a height and nothing of the reader's.
  const tell = () =>
    window.parent.postMessage(
      { type: HEIGHT_MESSAGE, height: Math.ceil(document.body.getBoundingClientRect().height) },
      '*',
    );
  new ResizeObserver(tell).observe(document.body);
}

/** The height in a message, held within bounds; undefined for any message that is not ours. */
export function heightIn(data: unknown): number | undefined {
  if (typeof data !== 'object' || data === null) return undefined;
  const { type, height } = data as { type?: unknown; height?: unknown };
  if (type !== HEIGHT_MESSAGE || typeof height !== 'number' || !Number.isFinite(height)) return undefined;
  return Math.min(HEIGHTS.most, Math.max(HEIGHTS.least, Math.round(height)));
}

/** Around the frames of this same site: sets each to the height it tells. */
export function listenForHeights(frames: readonly HTMLIFrameElement[]): void {
  window.addEventListener('message', (event) => {
    const frame = frames.find(({ contentWindow }) => contentWindow !== null && contentWindow === event.source);
    const height = heightIn(event.data);
    if (event.origin === window.location.origin && frame && height !== undefined) frame.height = String(height);
  });
}
