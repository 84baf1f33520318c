/**
 * A module of ours in one bundle, as readers get it. Vitest reads each import anew wherever it is used, which nearly
 * doubles the time of code whose work is small calls between files, and no reader waits for that.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/** `source`: address of the module, as from `new URL('…', import.meta.url)`. */
export async function asShipped<Module>(source: URL): Promise<Module> {
  const folder = await mkdtemp(join(tmpdir(), 'open-time-bench-'));
  const outfile = join(folder, 'bundle.mjs');
  await build({ entryPoints: [fileURLToPath(source)], outfile, bundle: true, format: 'esm', minify: true });
  const bundle = (await import(/* @vite-ignore */ pathToFileURL(outfile).href)) as Module;
  await rm(folder, { recursive: true });
  return bundle;
}
