/**
 * Makes what a reader fetches a quarter of its size on hosts that squeeze nothing themselves: beside each text file the
 * same as `.br` and `.gz` (13.7 MB as 3.4 and 4.0). Last of the build. BUILD_PRECOMPRESS=no leaves them out.
 */
import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import type { AstroIntegration } from 'astro';

const TEXT = /\.(?:html|js|css|svg|json|xml|txt|webmanifest)$/;
/** Below this what is saved is less than a packet, bytes. */
const LEAST = 700;
/** Those made from records: five in six. */
const OF_RECORDS = /^(?:answers|shelf[\\/][^\\/]+|embed)[\\/][^\\/]+[\\/]/;
/**
 * Measured on the whole site: 9 gives a tenth more than 11, and 10 a fiftieth in less than half of the time. The few
 * scripts, which every page shares, and the pages where readers begin get the best: 0.3 to 0.7 kB of each lesson.
 */
const qualityOf = (name: string) => (/\.(?:js|html)$/.test(name) && !OF_RECORDS.test(name) ? 11 : 10);

const br = promisify(brotliCompress);
const gz = promisify(gzip);

export function precompress(): AstroIntegration {
  return {
    name: 'precompress',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        if (process.env['BUILD_PRECOMPRESS'] === 'no') return logger.info('left out, as asked');
        const root = fileURLToPath(dir);
        const files = (await readdir(root, { recursive: true })).filter((name) => TEXT.test(name));
        // zlib works in four threads of its own
        await Promise.all(files.map((name) => squeeze(root, name)));
      },
    },
  };
}

async function squeeze(root: string, name: string): Promise<void> {
  const file = path.join(root, name);
  const plain = await readFile(file);
  if (plain.length < LEAST) return;
  const params = {
    [constants.BROTLI_PARAM_QUALITY]: qualityOf(name),
    [constants.BROTLI_PARAM_SIZE_HINT]: plain.length,
  };
  await writeFile(`${file}.br`, await br(plain, { params }));
  await writeFile(`${file}.gz`, await gz(plain, { level: 9 }));
}
