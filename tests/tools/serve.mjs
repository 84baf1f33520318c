// @ts-check
/**
 * Serves the built site as a plain static host would: folders answer with their index.html, unknown
 * addresses with 404.html and status 404, what was squeezed at build is sent squeezed, and everything lives
 * under BASE_PATH when that is set.
 * `node tests/tools/serve.mjs` serves dist/ on http://localhost:4321; the site tests import it.
 */
import { createServer } from 'node:http';
import { existsSync } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const DIST = fileURLToPath(new URL('../../dist/', import.meta.url));

/** @type {Record<string, string>} */
const TYPES = {
  '.avif': 'image/avif',
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.gif': 'image/gif',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.webp': 'image/webp',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
};

/** `paper`, `/paper` and `/paper/` all mean the sub-path `/paper/`. @param {string} given */
export function asBase(given) {
  const inner = given.replace(/^\/+|\/+$/g, '');
  return inner === '' ? '/' : `/${inner}/`;
}

/**
 * What to send for an address: a file, or the address it lives at.
 * @param {string} root @param {string} base @param {string} address path part of the address
 * @returns {Promise<{ file: string } | { moved: string } | undefined>}
 */
async function find(root, base, address) {
  if (address === base.slice(0, -1)) return { moved: base };
  if (!address.startsWith(base)) return undefined;
  let inside;
  try {
    inside = decodeURIComponent(address.slice(base.length));
  } catch {
    return undefined;
  }
  const file = path.join(root, inside);
  if (inside.includes('\0') || path.relative(root, file).startsWith('..')) return undefined;
  const found = await stat(file).catch(() => undefined);
  if (found?.isFile()) return { file };
  if (!found?.isDirectory() || !existsSync(path.join(file, 'index.html'))) return undefined;
  return address.endsWith('/') ? { file: path.join(file, 'index.html') } : { moved: `${address}/` };
}

/**
 * The file as small as its reader can take it, whole where nothing smaller lies beside it.
 * @param {string} file @param {string} accepted
 */
async function squeezed(file, accepted) {
  for (const [encoding, ending] of [
    ['br', '.br'],
    ['gzip', '.gz'],
  ]) {
    if (!new RegExp(`\\b${encoding}\\b(?!;q=0(?:\\.0*)?(?:,|$))`).test(accepted)) continue;
    const body = await readFile(file + ending).catch(() => undefined);
    if (body) return { body, encoding };
  }
  return { body: await readFile(file).catch(() => undefined), encoding: undefined };
}

/**
 * @param {{ root?: string, base?: string, port?: number }} [options] port 0 takes any free one
 * @returns {Promise<{ origin: string, url: string, close: () => Promise<void> }>}
 */
export async function serve({ root = DIST, base = '/', port = 0 } = {}) {
  const folder = path.resolve(root);
  const at = asBase(base);
  const server = createServer(async (request, response) => {
    // read by hand: `new URL` throws on some of what can be typed
    const [, pathname = '/', search = ''] = /^([^?#]*)(\?[^#]*)?/.exec(request.url ?? '/') ?? [];
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { Allow: 'GET, HEAD' }).end();
      return;
    }
    const found = await find(folder, at, pathname);
    if (found && 'moved' in found) {
      response.writeHead(301, { Location: found.moved + search }).end();
      return;
    }
    const file = found?.file ?? path.join(folder, '404.html');
    const { body, encoding } = await squeezed(file, request.headers['accept-encoding'] ?? '');
    response.writeHead(found ? 200 : 404, {
      ...(encoding && { 'Content-Encoding': encoding }),
      Vary: 'Accept-Encoding',
      'Content-Type': body ? (TYPES[path.extname(file).toLowerCase()] ?? 'application/octet-stream') : 'text/plain',
      // what the build names by its content never changes
      'Cache-Control': pathname.startsWith(`${at}_astro/`) && found ? 'max-age=31536000, immutable' : 'no-cache',
    });
    response.end(request.method === 'HEAD' ? undefined : (body ?? 'Not found'));
  });
  await new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve(undefined));
  });
  const taken = server.address();
  if (taken === null || typeof taken === 'string') throw new Error('the server has no port');
  const origin = `http://localhost:${taken.port}`;
  return {
    origin,
    url: origin + at,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/** Takes the first free port from 4321 on, unless PORT asks for a certain one. */
async function main() {
  if (!existsSync(path.join(DIST, 'index.html'))) {
    console.error('There is no built site in dist/ yet. Run: npm run build');
    process.exit(1);
  }
  const asked = process.env['PORT'];
  const ports = asked === undefined ? [4321, 4322, 4323, 4324, 4325] : [Number(asked)];
  for (const port of ports) {
    try {
      const { url } = await serve({ base: process.env['BASE_PATH'] ?? '/', port });
      console.log(`\nOpen Time is at ${url}\nStop it with Ctrl+C.`);
      return;
    } catch (problem) {
      const code = problem instanceof Error && 'code' in problem ? problem.code : undefined;
      console.error(code === 'EADDRINUSE' ? `Port ${port} is in use.` : `Port ${port}: ${String(problem)}`);
    }
  }
  console.error('Choose another port, for instance: PORT=8080 npm start');
  process.exit(1);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await main();
