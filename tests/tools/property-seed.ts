/**
 * Property tests draw the same examples on every run, so that a red build means a change and not a draw.
 * `SEED=7 npm run test:unit` draws others; do that now and then, and keep what it finds.
 */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env['SEED'] ?? 20261125) });
