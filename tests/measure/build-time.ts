/** How the time to build grows with the number of lessons: in a copy, so that nothing here is touched. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

export interface BuildTime {
  readonly lessons: number;
  readonly seconds: number;
}

const COPIED = ['astro.config.mjs', 'package.json', 'tsconfig.json', 'content', 'public', 'src', 'tests/tools'];

/** Builds with `count` lessons: the site's own, then copies of them in turn under other names. */
function buildWith(root: string, count: number): number {
  const folder = path.join(root, 'content/lessons');
  const own = readdirSync('content/lessons').sort();
  for (const name of readdirSync(folder)) rmSync(path.join(folder, name));
  // lessons name one another, so the site's own always stay
  for (let i = 0; i < Math.max(count, own.length); i += 1) {
    const name = own[i % own.length]!;
    const text = readFileSync(path.join('content/lessons', name), 'utf8');
    const copy = i < own.length ? name : name.replace(/\.mdx$/, `-${i}.mdx`);
    writeFileSync(path.join(folder, copy), i < own.length ? text : text.replace(/^order: .*$/m, `order: ${1000 + i}`));
  }
  for (const left of ['.astro', 'dist']) rmSync(path.join(root, left), { recursive: true, force: true });
  const began = performance.now();
  const { status, stdout, stderr } = spawnSync(process.execPath, ['tests/tools/astro.mjs', 'build'], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  });
  if (status !== 0) throw new Error(`the build of ${count} lessons failed:\n${(stdout + stderr).slice(-2000)}`);
  return (performance.now() - began) / 1000;
}

export function measureBuildTimes(counts: readonly number[]): BuildTime[] {
  const root = mkdtempSync(path.join(tmpdir(), 'open-time-build-'));
  try {
    for (const name of COPIED) cpSync(name, path.join(root, name), { recursive: true });
    symlinkSync(path.resolve('node_modules'), path.join(root, 'node_modules'), 'junction');
    const own = readdirSync('content/lessons').length;
    return counts.map((count) => {
      const row = { lessons: Math.max(count, own), seconds: buildWith(root, count) };
      console.log(`${row.lessons} lessons: ${row.seconds.toFixed(1)} s`);
      return row;
    });
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
}
