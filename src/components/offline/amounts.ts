/** What a browser keeps, and what of that travels where the host squeezes what it sends; `tests/site/offline` holds both to the build. */
export const AMOUNTS = {
  core: 'some 1.5 MB (0.5 MB over the network)',
  whole: 'some 16 MB (5 MB over the network)',
};
