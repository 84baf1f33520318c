// @ts-check
/**
 * Scripts that have not changed since the last build are not made small anew: what was made of them then is taken
 * from `.cache/scripts`. Vite's own step is wrapped, so a first build goes as it would without.
 */
import { createHash } from 'node:crypto';
import { createRequire } from 'node:module';
import path from 'node:path';
import { keptIn } from './kept.mjs';

const { version } = createRequire(import.meta.url)('terser/package.json');

/** @returns {import('astro').ViteUserConfig['plugins']} */
export function keptScripts() {
  /** @type {Awaited<ReturnType<typeof keptIn>> | undefined} */
  let kept;
  return [
    {
      name: 'kept-scripts',
      apply: 'build',
      async configResolved({ build, plugins }) {
        const step = plugins.find(({ name }) => name === 'vite:terser');
        const small = step?.renderChunk;
        // the code that writes the pages stays as it is
        if (build.ssr || !step || typeof small !== 'function') return;
        const held = await keptIn(path.resolve('.cache/scripts'));
        kept = held;
        const how = `${version} ${JSON.stringify(build.terserOptions)}`;
        step.renderChunk = async function (code, ...rest) {
          const name = createHash('sha256').update(how).update(code).digest('hex');
          const made = await held.get(`${name}.js`, async () => {
            const answer = await small.call(this, code, ...rest);
            return Buffer.from(typeof answer === 'string' ? answer : (answer?.code ?? code));
          });
          return { code: String(made), map: null };
        };
      },
      closeBundle: () => kept?.drop(),
    },
  ];
}
