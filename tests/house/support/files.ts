/** The files of this project as they stand on disk. */
import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';

export const ROOT = path.resolve('.');

/** What a checkout gathers while it is worked in, and does not keep (see .gitignore). */
const PASSING = ['node_modules', 'dist', '.astro', '.cache', 'coverage', '.git', '.DS_Store'];

/** Names at the top level, without those that pass. */
export const topLevel = () => readdirSync(ROOT).filter((name) => !PASSING.includes(name) && !name.endsWith('.log'));

/** All files below the folders named, from the root, with forward slashes. */
export function filesIn(...folders: readonly string[]): string[] {
  return folders.flatMap((folder) =>
    readdirSync(path.join(ROOT, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => path.relative(ROOT, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
      .sort(),
  );
}

export const textOf = (file: string) => readFileSync(path.join(ROOT, file), 'utf8');
