/** Bands of use by strength, %. From memory: sizing 0.5–1, adhesive 2–5; between them it goes into PVA. */
export const USE_BANDS = [
  { from: 0.5, to: 1, name: 'sizing' },
  { from: 1, to: 2, name: 'mixing with PVA' },
  { from: 2, to: 5, name: 'adhesive' },
] as const;
