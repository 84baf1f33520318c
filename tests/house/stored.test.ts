/** The page about what is kept names everything that the code writes on a device, and nothing else. */
import { expect, test } from 'vitest';
import { KEPT } from '../../src/components/privacy/kept';
import { filesIn, textOf } from './support/files';

/** a message between a frame and the page around it; the first word of a trial's file */
const NOT_STORED = ['open-time:height', 'open-time-trial'];
const NAME = /['"`](open-time[:-][a-z-]+:?)/g;

test('every name under which something is stored is on the page about what is kept', () => {
  const code = filesIn('src').filter(
    (file) => /\.(?:ts|tsx|mjs|astro)$/.test(file) && !file.endsWith('privacy/kept.ts'),
  );
  const written = new Set(
    code.flatMap((file) => [...textOf(file).matchAll(NAME)].map(([, name = '']) => name.replace(/-$/, ''))),
  );
  for (const name of NOT_STORED) expect(written.delete(name)).toBe(true);
  // named by the worker's library from the site's own name
  expect(textOf('src/build/offline.ts')).toContain("cacheId: 'open-time'");
  written.add('open-time-precache');
  expect([...written].sort()).toEqual(KEPT.map(({ name }) => name).sort());
});

test('only the places known of write on a device', () => {
  const WRITES = /\.setItem\(|openDB\(|indexedDB|caches\.open\(|document\.cookie|sessionStorage/;
  const writers = filesIn('src').filter((file) => /\.(?:ts|tsx|mjs|astro)$/.test(file) && WRITES.test(textOf(file)));
  expect(writers).toEqual([
    'src/components/FoldForm.astro',
    'src/components/offline/earlier-files.mjs',
    'src/components/offline/rest-of-site.mjs',
    'src/islands/parts/wake-on-use.mjs',
    'src/islands/trial/TrialPlan.tsx',
    'src/stores/choose/evidence.ts',
    'src/stores/lesson/answered.ts',
    'src/stores/shared/bench-job.ts',
    'src/stores/shared/device-storage.ts',
    'src/stores/shared/own-bench.ts',
    'src/stores/shared/own-papers.ts',
    'src/stores/trial/photos.ts',
    'src/stores/trial/plan.ts',
    'src/stores/trial/run.ts',
    'src/stores/trial/shelf.ts',
  ]);
});
