// @ts-check
/**
 * Last of the build: beside each text file the same squeezed, as `.br` and `.gz`, for hosts that send those as they lie.
 * BUILD_PRECOMPRESS=no leaves them out, for a host that squeezes by itself. What has not changed since the last build is
 * taken from `.cache/squeezed`.
 */
import { createHash } from 'node:crypto';
import { readdir, readFile, stat, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import { keptIn } from './kept.mjs';

const TEXT = /\.(?:html|js|css|svg|json|xml|txt|webmanifest)$/;
/** Below this what is saved is less than a packet, bytes. */
const LEAST = 700;
/**
 * Measured on the whole site: 9 gives 1.39 MB, 10 gives 1.28 MB, 11 gives 1.25 MB in more than twice the time. The few
 * scripts, which every page shares, get the best.
 */
const qualityOf = (/** @type {string} */ file) => (file.endsWith('.js') ? 11 : 10);
/** zlib works in four threads of its own. */
const AT_ONCE = 8;

/** Where what is kept would be another file. */
const HOW = `${process.versions['brotli']} ${process.versions['zlib']}`;

const br = promisify(brotliCompress);
const gz = promisify(gzip);

/** @returns {import('astro').AstroIntegration} */
export function precompress() {
  return {
    name: 'precompress',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        if (process.env['BUILD_PRECOMPRESS'] === 'no') return logger.info('left out, as asked');
        const root = fileURLToPath(dir);
        const files = (await readdir(root, { recursive: true })).filter((name) => TEXT.test(name));
        const kept = await keptIn(path.resolve('.cache/squeezed'));
        const sum = { plain: 0, br: 0, gz: 0 };
        const work = async () => {
          for (let name = files.pop(); name !== undefined; name = files.pop()) {
            const { plain, br, gz } = await squeeze(path.join(root, name), kept);
            sum.plain += plain;
            sum.br += br;
            sum.gz += gz;
          }
        };
        await Promise.all(Array.from({ length: AT_ONCE }, work));
        await kept.drop();
        const MB = (/** @type {number} */ bytes) => `${(bytes / 1e6).toFixed(2)} MB`;
        logger.info(`text ${MB(sum.plain)}, as gzip ${MB(sum.gz)}, as brotli ${MB(sum.br)}`);
      },
    },
  };
}

/** @param {string} file @param {Awaited<ReturnType<typeof keptIn>>} kept */
async function squeeze(file, kept) {
  if (!(await stat(file)).isFile()) return { plain: 0, br: 0, gz: 0 };
  const plain = await readFile(file);
  if (plain.length < LEAST) return { plain: plain.length, br: plain.length, gz: plain.length };
  const quality = qualityOf(file);
  const name = createHash('sha256').update(`${HOW} ${quality}`).update(plain).digest('hex');
  const params = { [constants.BROTLI_PARAM_QUALITY]: quality, [constants.BROTLI_PARAM_SIZE_HINT]: plain.length };
  const [small, smallish] = await Promise.all([
    kept.get(`${name}.br`, () => br(plain, { params })),
    kept.get(`${name}.gz`, () => gz(plain, { level: 9 })),
  ]);
  await Promise.all([writeFile(`${file}.br`, small), writeFile(`${file}.gz`, smallish)]);
  return { plain: plain.length, br: small.length, gz: smallish.length };
}
