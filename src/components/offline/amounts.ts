/** What a browser keeps, and what of that travels where the host squeezes what it sends; `tests/site/offline` holds both to the build. */
export const AMOUNTS = {
  core: 'some 1.3 MB (0.4 MB over the network)',
  whole: 'some 15 MB (5 MB over the network)',
};
