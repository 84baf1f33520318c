// @ts-check
/**
 * Wakes a built Preact island in the page, after what it has to work out first: in turns, so that no one part of the waking
 * keeps a thumb waiting. It stands in for the one of @astrojs/preact, which knows of no such work.
 */
import { h, hydrate, render } from 'preact';

/** An island may have something to work out before it wakes: `prepare` is given its props, with what was typed until
 * then by the ids of the fields. Where it is to show something else than the built page does, `isOther` says so, and
 * every attribute is compared instead of taken as it is.
 * @typedef {import('preact').ComponentType & { prepare?: (props: any) => Promise<void>, isOther?: (props: any) => boolean }} Island */

/** Lets the browser do what waits, so that no one part of the waking keeps a thumb waiting. */
const nextTurn = () => new Promise((turn) => setTimeout(turn));

/** @param {HTMLElement & { typed?: () => object }} island */
export default (island) => async (/** @type {Island} */ Component, /** @type {object} */ built) => {
  await nextTurn();
  const props = { ...built, typed: island.typed?.() };
  await Component.prepare?.(props);
  await nextTurn();
  if (!island.hasAttribute('ssr')) return;
  island.dispatchEvent(new Event('wake'));
  (Component.isOther?.(props) ? render : hydrate)(h(/** @type {any} */ (Component), props), island);
};
