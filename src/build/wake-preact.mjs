// @ts-check
/**
 * Wakes a built Preact island in the page. It stands in for the one of @astrojs/preact, which brings along the
 * reading of signals and slots that no island here has: a kilobyte less on every page with a calculator.
 */
import { h, hydrate } from 'preact';

/** @param {HTMLElement} island */
export default (island) =>
  /** @param {import('preact').ComponentType} Component @param {object} props */
  async (Component, props) => {
    if (island.hasAttribute('ssr')) hydrate(h(Component, props), island);
  };
