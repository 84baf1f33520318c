// @ts-check
/**
 * Types of all there is, by TypeScript's compiled program, in a third of the processor time that `astro check` takes. That
 * program knows nothing of Astro components, so each is written out as TSX, by what Astro's own tools for editors do it
 * with, into a folder that is read as if it were `src`; what is found there is told of the component itself. `--synced`:
 * what Astro derives from the content is new already, as it is after a build.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { convertToTsx } from '@astrojs/astro2tsx';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const MIRROR = path.join(ROOT, '.cache/types');
const require = createRequire(import.meta.url);
const packageOf = (/** @type {string} */ name) => path.dirname(require.resolve(`${name}/package.json`));

/**
 * What may be in a component and not in TSX: several attributes of one name, and a return before the markup.
 * @type {ReadonlySet<string>}
 */
const ALLOWED = new Set(['TS17001', 'TS1108']);

/**
 * A piece of a component as TypeScript reads it.
 * @typedef {{ component: string, source: string, code: string, spans: readonly (readonly (number | undefined)[])[] }} Piece
 */

/** By the file into which it is written. @type {Map<string, Piece>} */
const pieces = new Map();
/** @type {string[]} */
const faults = [];

/** Line and column, from 1 on, of a place in a text. @param {string} text @param {number} at */
const placeOf = (text, at) => {
  const before = text.slice(0, at).split('\n');
  return `${before.length},${(before.at(-1)?.length ?? 0) + 1}`;
};

/** @param {string} component path from the root */
function writeOut(component) {
  const source = readFileSync(path.join(ROOT, component), 'utf8');
  const { code, mappings, scripts, diagnostics } = convertToTsx(source, { filename: component, ambientTypes: true });
  for (const { message, severity, position } of diagnostics)
    if (severity <= 2) faults.push(`${component}(${placeOf(source, position.start)}): ${message}`);
  pieces.set(`${component}.tsx`, { component, source, code, spans: mappings });
  scripts.forEach(({ content, position, type }, i) => {
    const ending = { 'processed-module': 'mts', module: 'mjs', inline: 'mjs' }[String(type)];
    const spans = [[0, content.length, position.start, content.length]];
    if (ending) pieces.set(`${component}.${i}.${ending}`, { component, source, code: content, spans });
  });
}

/** What TypeScript says of a piece, said of its component; nothing where it speaks of what is in no component. @param {string} said */
function ofComponent(said) {
  const [, file = '', line = '', column = '', code = '', rest = ''] =
    /^(.+?)\((\d+),(\d+)\): error (TS\d+): ([^]*)$/.exec(said) ?? [];
  const piece = pieces.get(path.relative(MIRROR, path.resolve(ROOT, file)).split(path.sep).join('/'));
  if (!piece) return said;
  const before = piece.code.split('\n').slice(0, Number(line) - 1);
  const at = before.reduce((sum, { length }) => sum + length + 1, 0) + Number(column) - 1;
  const span = piece.spans.find(([start = 0, length = 0]) => at >= start && at <= start + length);
  if (!span || ALLOWED.has(code)) return undefined;
  const [start = 0, , from = 0, length = 0] = span;
  return `${piece.component}(${placeOf(piece.source, from + Math.min(at - start, length))}): error ${code}: ${rest}`;
}

if (!process.argv.includes('--synced') || !existsSync(path.join(ROOT, '.astro/content.d.ts'))) {
  const { status } = spawnSync(process.execPath, [path.join(ROOT, 'tests/tools/astro.mjs'), 'sync'], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  if (status !== 0) process.exit(1);
}

const components = readdirSync(path.join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.astro'))
  .map((name) => `src/${name.split(path.sep).join('/')}`);
components.forEach(writeOut);
rmSync(MIRROR, { recursive: true, force: true });
for (const [file, { code }] of pieces) {
  mkdirSync(path.dirname(path.join(MIRROR, file)), { recursive: true });
  writeFileSync(path.join(MIRROR, file), code);
}
writeFileSync(
  path.join(MIRROR, 'tsconfig.json'),
  JSON.stringify({
    extends: '../../tsconfig.json',
    compilerOptions: {
      rootDirs: ['../..', '.'],
      paths: { '#components/*': ['../../src/components/*', './src/components/*'] },
      noEmit: true,
      incremental: false,
      tsBuildInfoFile: null,
      jsx: 'preserve',
    },
    include: [
      './src',
      ...['.astro/types.d.ts', 'src', 'tests', '.config', 'astro.config.ts'].map((one) => `../../${one}`),
    ],
  }),
);
const { stdout, stderr } = spawnSync(
  process.execPath,
  [path.join(packageOf('typescript-native'), 'bin/tsc'), '--pretty', 'false', '-p', MIRROR],
  { cwd: ROOT, encoding: 'utf8', maxBuffer: 1e8 },
);
// each begins a line, and what explains it is indented
const said = `${stdout}${stderr}`.split(/\n(?=\S)/).filter((one) => one.trim() !== '');
faults.push(...said.flatMap((one) => ofComponent(one.trimEnd()) ?? []));
console.log([...faults, `${components.length} components and what they use: ${faults.length} errors`].join('\n'));
process.exitCode = faults.length > 0 ? 1 : 0;
