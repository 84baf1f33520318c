// @ts-check
/**
 * `npm run test:fuzz`: all 11 000 hostile links over the built site, some ten minutes, and 100 000 hostile files
 * of trials, a minute. `npm test` does a slice.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const vitest = fileURLToPath(new URL('../../node_modules/vitest/vitest.mjs', import.meta.url));
const { status } = spawnSync(
  process.execPath,
  [
    vitest,
    'run',
    '--config',
    '.config/vitest.config.ts',
    '--project',
    'site',
    '--project',
    'node',
    'fuzz',
    '-t',
    'hostile',
  ],
  { stdio: 'inherit', env: { ...process.env, FUZZ: 'full' } },
);
process.exitCode = status ?? 1;
