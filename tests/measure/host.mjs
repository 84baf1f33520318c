// @ts-check
/**
 * `npm run test:host`: the built site behind nginx, the way a small host would run it, and under a sub-path.
 *
 * 1. Two builds are laid side by side as releases, `current` is a symbolic link to one of them, and nginx sends what was
 *    squeezed at build. wrk asks for every page, script and style as fast as it can while `current` is switched to the
 *    other release and back, each time in one step. Not one answer may be an error.
 * 2. Single answers are looked at: their headers, an unknown address, a file that has changed.
 * 3. The site is built under a sub-path, and the tests of its use without a network run on that build.
 *
 * Needs nginx and wrk (`apt-get install nginx wrk`, and libnginx-mod-http-brotli-static where there is one). Says so and
 * fails where they are missing. SECONDS=20 sets how long wrk asks; `npm run test:host -- nginx` and `-- sub-path` do one half.
 */
import { spawn, spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { createServer } from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const SECONDS = Number(process.env['SECONDS'] ?? 12);
const SWITCH_EVERY_MS = 300;
const asked = process.argv[2];

/** @param {string} words @returns {never} */
function giveUp(words) {
  console.error(`\nThe host was not tried: ${words}`);
  process.exit(2);
}
const found = (/** @type {string} */ program) => spawnSync(program, ['-v']).error === undefined;
const missing = ['nginx', 'wrk'].filter((program) => !found(program));
if (missing.length > 0)
  giveUp(`${missing.join(' and ')} not installed. On Debian: apt-get install ${missing.join(' ')}`);
if (!existsSync(path.join(ROOT, 'dist/index.html'))) giveUp('there is no built site in dist/. Run: npm run build');
if (!existsSync(path.join(ROOT, 'dist/index.html.gz'))) giveUp('dist/ was built with BUILD_PRECOMPRESS=no.');

const folder = mkdtempSync(path.join(os.tmpdir(), 'open-time-host-'));
const current = path.join(folder, 'current');
/** @type {(() => void)[]} */
const undo = [() => rmSync(folder, { recursive: true, force: true })];

/** @type {string[]} */
const faults = [];
/** @param {boolean} right @param {string} words */
function check(right, words) {
  console.log(`${right ? '✓' : '✗'} ${words}`);
  if (!right) faults.push(words);
}

/** In one step: there is no moment at which `current` leads nowhere. @param {string} release */
function switchTo(release) {
  const next = path.join(folder, 'next');
  symlinkSync(release, next);
  renameSync(next, current);
}

/** @returns {Promise<number>} */
const freePort = () =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });

/** Headers as dist/_headers lists them, as locations of nginx. */
function locations() {
  const list = readFileSync(path.join(ROOT, 'dist/_headers'), 'utf8').replace(/^#.*\n/gm, '');
  const rules = list.trim().split(/\n\n+/);
  const parsed = rules.map((rule) => {
    const [place = '', ...lines] = rule.split('\n');
    return { place, lines: lines.map((line) => /^\s+([^:]+): (.*)$/.exec(line)?.slice(1) ?? []) };
  });
  const everywhere = parsed.find(({ place }) => place === '/*')?.lines ?? [];
  const add = (/** @type {string[][]} */ lines) =>
    [...everywhere, ...lines].map(([name, value]) => `      add_header ${name} "${value}" always;`).join('\n');
  return parsed
    .filter(({ place }) => place !== '/*')
    .map(({ place, lines }) => {
      const where = place.endsWith('/*') ? `^~ ${place.slice(0, -1)}` : `= ${place}`;
      return `    location ${where} {\n${add(lines)}\n    }`;
    })
    .join('\n');
}

/** @param {number} port */
function configuration(port) {
  const brotli = '/usr/lib/nginx/modules/ngx_http_brotli_static_module.so';
  const hasBrotli = existsSync(brotli);
  return {
    hasBrotli,
    text: `${hasBrotli ? `load_module ${brotli};\n` : ''}${process.getuid?.() === 0 ? `user ${os.userInfo().username};\n` : ''}worker_processes 1;
daemon off;
pid ${folder}/nginx.pid;
error_log ${folder}/error.log warn;
events { worker_connections 1024; }
http {
  types {
    text/html html; text/css css; text/javascript js mjs; application/json json; image/svg+xml svg; image/png png;
    font/woff2 woff2; application/manifest+json webmanifest; application/xml xml; text/plain txt;
  }
  charset utf-8;
  charset_types text/css text/javascript application/json text/plain application/xml;
  default_type application/octet-stream;
  access_log off;
  sendfile on;
  tcp_nopush on;
  keepalive_requests 100000;
  client_body_temp_path ${folder}/t1; proxy_temp_path ${folder}/t2; fastcgi_temp_path ${folder}/t3;
  uwsgi_temp_path ${folder}/t4; scgi_temp_path ${folder}/t5;
  server {
    listen 127.0.0.1:${port};
    root ${current};
    error_page 404 /404.html;
    gzip_static on;
    gzip_vary on;
${hasBrotli ? '    brotli_static on;\n' : ''}${locations()}
  }
}
`,
  };
}

/** Every address that a reader's browser may ask for. @param {string} release */
function addressesOf(release) {
  return readdirSync(release, { recursive: true, encoding: 'utf8' })
    .map((name) => name.split(path.sep).join('/'))
    .filter((name) => /\.(?:html|js|css|svg|woff2|webmanifest|json|pf_\w+)$/.test(name))
    .map((name) => `/${name.replace(/(^|\/)index\.html$/, '$1')}`);
}

/** @param {readonly string[]} addresses */
function wrkScript(addresses) {
  return `local paths = { ${addresses.map((one) => JSON.stringify(one)).join(', ')} }
local at = 0
local threads = {}
function setup(thread) table.insert(threads, thread) end
function init() wrong = 0; math.randomseed(os.time()); at = math.random(#paths) end
function request()
  at = at % #paths + 1
  return wrk.format('GET', paths[at], { ['Accept-Encoding'] = 'br, gzip' })
end
function response(status) if status ~= 200 then wrong = wrong + 1 end end
function done(summary, latency)
  local wrong = 0
  for _, thread in ipairs(threads) do wrong = wrong + thread:get('wrong') end
  local e = summary.errors
  io.write(string.format('RESULT {"requests":%d,"bytes":%d,"seconds":%.3f,"wrong":%d,"socket":%d,"p50ms":%.3f,"p99ms":%.3f}\\n',
    summary.requests, summary.bytes, summary.duration / 1e6, wrong, e.connect + e.read + e.write + e.timeout,
    latency:percentile(50) / 1000, latency:percentile(99) / 1000))
end
`;
}

/** @param {string} program @param {readonly string[]} args @returns {Promise<string>} */
const output = (program, args) =>
  new Promise((resolve, reject) => {
    const child = spawn(program, args, { stdio: ['ignore', 'pipe', 'inherit'] });
    let text = '';
    child.stdout.on('data', (piece) => (text += piece));
    child.once('error', reject);
    child.once('exit', () => resolve(text));
  });

/** The same site built once more, with a file that tells the two apart; what pages still open may ask for stays. */
function nextRelease() {
  const [one, two] = ['release-1', 'release-2'].map((name) => path.join(folder, name));
  if (!one || !two) throw new Error('no release');
  cpSync(path.join(ROOT, 'dist'), one, { recursive: true });
  const build = spawnSync(process.execPath, [path.join(ROOT, 'tests/tools/astro.mjs'), 'build', '--outDir', two], {
    cwd: ROOT,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  if (build.status !== 0) giveUp('the second release could not be built.');
  cpSync(path.join(one, '_astro'), path.join(two, '_astro'), { recursive: true, force: false });
  writeFileSync(path.join(two, 'release.txt'), 'release 2\n');
  writeFileSync(path.join(one, 'release.txt'), 'release 1\n');
  return { one, two };
}

/** @param {string} origin */
async function lookAtAnswers(origin) {
  const ask = (/** @type {string} */ address, accept = 'br, gzip') =>
    fetch(origin + address, { headers: { 'Accept-Encoding': accept }, redirect: 'manual' });
  const script = addressesOf(current).find((one) => /^\/_astro\/.*\.js$/.test(one)) ?? '/';
  const [home, asset, frame, lost, worker] = await Promise.all(
    ['/', script, '/embed/choose/', '/no-such-page/', '/sw.js'].map((one) => ask(one)),
  );
  if (!home || !asset || !frame || !lost || !worker) throw new Error('no answer');
  const of = (/** @type {Response} */ response, /** @type {string} */ name) => response.headers.get(name) ?? '';
  check(
    of(home, 'cache-control') === 'no-cache' && of(worker, 'cache-control') === 'no-cache',
    'pages and the worker are asked after each time',
  );
  check(/immutable/.test(of(asset, 'cache-control')), 'files with a hash in their name are kept for good');
  check(
    of(home, 'x-content-type-options') === 'nosniff' && of(asset, 'x-content-type-options') === 'nosniff',
    'types are not guessed',
  );
  check(
    of(home, 'content-security-policy') === "frame-ancestors 'self'" &&
      of(frame, 'content-security-policy') === 'frame-ancestors *',
    'only the framed calculators may be framed by others',
  );
  check(lost.status === 404 && (await lost.text()).includes('<h1'), 'an unknown address answers 404 with a page');
  check(of(await ask('/', 'gzip'), 'content-encoding') === 'gzip', 'gzip goes out as it lies');
  check(!of(await ask('/', 'identity'), 'content-encoding'), 'plain goes out to those who read only that');
  return of(home, 'content-encoding');
}

async function behindNginx() {
  console.log('── building the second release');
  const { one, two } = nextRelease();
  switchTo(one);
  const port = await freePort();
  const { text, hasBrotli } = configuration(port);
  for (const name of ['t1', 't2', 't3', 't4', 't5']) mkdirSync(path.join(folder, name));
  writeFileSync(path.join(folder, 'nginx.conf'), text);
  const nginx = spawn('nginx', ['-p', folder, '-c', path.join(folder, 'nginx.conf')], { stdio: 'inherit' });
  undo.push(() => nginx.kill('SIGQUIT'));
  const origin = `http://127.0.0.1:${port}`;
  for (let i = 0; i < 50; i += 1) {
    if (
      await fetch(origin).then(
        () => true,
        () => false,
      )
    )
      break;
    await new Promise((done) => setTimeout(done, 100));
  }
  console.log(`\n── behind nginx, ${hasBrotli ? 'with' : 'WITHOUT'} the module that sends .br files`);
  const encoding = await lookAtAnswers(origin);
  check(encoding === (hasBrotli ? 'br' : 'gzip'), `a browser is sent ${encoding || 'plain text'}`);

  const both = addressesOf(one).filter(
    (address) => addressesOf(two).includes(address) || address.startsWith('/_astro/'),
  );
  const lasting = both.filter((address) => existsSync(path.join(two, address)));
  writeFileSync(path.join(folder, 'wrk.lua'), wrkScript(lasting));
  let switches = 0;
  const timer = setInterval(() => switchTo((switches += 1) % 2 === 1 ? two : one), SWITCH_EVERY_MS);
  const said = await output('wrk', ['-t1', '-c32', `-d${SECONDS}s`, '-s', path.join(folder, 'wrk.lua'), origin]);
  clearInterval(timer);
  const result = JSON.parse(/RESULT (.*)/.exec(said)?.[1] ?? 'null');
  if (!result) return check(false, `wrk said nothing that could be read:\n${said}`);
  console.log(
    `\n── ${lasting.length} addresses, 32 connections, ${result.seconds.toFixed(1)} s, ${os.cpus().length} cores shared with wrk\n` +
      `   ${Math.round(result.requests / result.seconds)} answers a second, ${(result.bytes / result.seconds / 1e6).toFixed(0)} MB a second, ` +
      `half within ${result.p50ms} ms, 99 of 100 within ${result.p99ms} ms; ${switches} switches`,
  );
  check(result.requests > 1000, `${result.requests} answers`);
  check(
    result.wrong === 0 && result.socket === 0,
    `${result.wrong} answers other than 200, ${result.socket} broken connections`,
  );
  switchTo(two);
  check(
    (await (await fetch(`${origin}/release.txt`)).text()) === 'release 2\n',
    'after a switch the new release answers',
  );
}

function underSubPath() {
  console.log('\n── built under /paper/, and used there without a network');
  const below = path.join(folder, 'below');
  const env = { ...process.env, BASE_PATH: '/paper/', BUILD_PRECOMPRESS: 'no', DIST: below };
  const began = performance.now();
  const build = spawnSync(process.execPath, ['tests/tools/astro.mjs', 'build', '--outDir', below], {
    cwd: ROOT,
    env,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  check(build.status === 0, `built in ${((performance.now() - began) / 1000).toFixed(0)} s`);
  const vitest = path.join(ROOT, 'node_modules/vitest/vitest.mjs');
  const words = ['run', '--config', '.config/vitest.config.ts', '--project', 'site', 'offline', 'links', 'finding'];
  const tests = spawnSync(process.execPath, [vitest, ...words], { cwd: ROOT, env, stdio: 'inherit' });
  check(tests.status === 0, 'the site works under a sub-path, its links, its search, and without a network');
}

try {
  if (asked !== 'sub-path') await behindNginx();
  if (asked !== 'nginx') underSubPath();
} finally {
  for (const step of undo.toReversed()) step();
}
console.log(faults.length === 0 ? '\nThe host holds.' : `\n${faults.length} faults.`);
process.exitCode = faults.length > 0 ? 1 : 0;
