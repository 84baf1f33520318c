// @ts-check
/**
 * What was worked out once is kept in a folder from build to build, under a name that says all that it was made
 * from. What a build had no use for is dropped at its end, so the folder never holds more than one site.
 */
import { mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';

/** @param {string} folder */
export async function keptIn(folder) {
  await mkdir(folder, { recursive: true });
  const there = new Set(await readdir(folder));
  /** @type {Set<string>} */
  const used = new Set();
  let begun = 0;
  return {
    /** @param {string} name @param {() => Promise<Buffer>} make */
    async get(name, make) {
      used.add(name);
      const file = path.join(folder, name);
      if (there.has(name)) return readFile(file);
      const made = await make();
      // whole under its name or not there at all, also when the build is stopped
      const unfinished = `${file}.${process.pid}-${(begun += 1)}`;
      await writeFile(unfinished, made);
      await rename(unfinished, file);
      return made;
    },
    async drop() {
      for (const name of there) if (!used.has(name)) await rm(path.join(folder, name), { force: true });
    },
  };
}
