/** How the time to build grows with the number of lessons: in a copy, so that nothing here is touched. */
import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

export interface BuildTime {
  readonly lessons: number;
  readonly seconds: number;
  /** of the build's own process; what it starts beside it comes on top */
  readonly peakMB: number;
}

const COPIED = ['astro.config.mjs', 'package.json', 'tsconfig.json', 'content', 'public', 'src', 'tests/tools'];

/** Makes it `count` lessons: the site's own, then copies of them in turn under other names. */
function fill(root: string, count: number): void {
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
  // from a cold start: nothing of the build before is there
  for (const left of ['.astro', '.cache', 'dist']) rmSync(path.join(root, left), { recursive: true, force: true });
}

const LAST_WORDS =
  'data:text/javascript,process.on("exit",()=>console.log("peak " + process.resourceUsage().maxRSS + " kB"))';
/** What `npm run build` tells Node. */
const AS_BUILT = ['--max-semi-space-size=64'];
const TELL_EVERY_MS = 20_000;

/** Builds, and tells now and then how far it is. */
function build(root: string, lessons: number): Promise<BuildTime> {
  const began = performance.now();
  const seconds = () => (performance.now() - began) / 1000;
  const child = spawn(process.execPath, [...AS_BUILT, '--import', LAST_WORDS, 'tests/tools/astro.mjs', 'build'], {
    cwd: root,
  });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => (said += String(part)));
  const telling = setInterval(() => {
    console.log(`  ${lessons} lessons, ${seconds().toFixed(0)} s: ${said.trim().split('\n').at(-1)?.trim() ?? ''}`);
  }, TELL_EVERY_MS);
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code) => {
      clearInterval(telling);
      const peak = Number(/^peak (\d+) kB$/m.exec(said)?.[1]);
      if (code === 0) resolve({ lessons, seconds: seconds(), peakMB: peak / 1000 });
      else reject(new Error(`the build of ${lessons} lessons failed:\n${said.slice(-2000)}`));
    });
  });
}

export async function measureBuildTimes(counts: readonly number[]): Promise<BuildTime[]> {
  const root = mkdtempSync(path.join(tmpdir(), 'open-time-build-'));
  try {
    for (const name of COPIED) cpSync(name, path.join(root, name), { recursive: true });
    symlinkSync(path.resolve('node_modules'), path.join(root, 'node_modules'), 'junction');
    const own = readdirSync('content/lessons').length;
    const rows: BuildTime[] = [];
    for (const count of counts) {
      fill(root, count);
      const row = await build(root, Math.max(count, own));
      rows.push(row);
      console.log(`${row.lessons} lessons: ${row.seconds.toFixed(1)} s, at most ${row.peakMB.toFixed(0)} MB of memory`);
    }
    return rows;
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
}
