/** The local server answers as a plain static host does, and gives out nothing from outside its folder. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { asBase, serve } from './serve.mjs';

const folder = mkdtempSync(path.join(tmpdir(), 'open-time-'));
const root = path.join(folder, 'dist');
let plain: Awaited<ReturnType<typeof serve>>;
let below: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  mkdirSync(path.join(root, 'lessons/größe'), { recursive: true });
  writeFileSync(path.join(root, 'index.html'), 'home');
  writeFileSync(path.join(root, '404.html'), 'no page here');
  writeFileSync(path.join(root, 'lessons/index.html'), 'lessons');
  writeFileSync(path.join(root, 'lessons/größe/index.html'), 'one lesson');
  writeFileSync(path.join(root, 'mark.svg'), '<svg/>');
  writeFileSync(path.join(root, 'long.txt'), 'long');
  writeFileSync(path.join(root, 'long.txt.br'), brotliCompressSync('long'));
  writeFileSync(path.join(root, 'long.txt.gz'), gzipSync('long'));
  writeFileSync(path.join(folder, 'secret.txt'), 'secret');
  plain = await serve({ root });
  below = await serve({ root, base: 'paper' });
});

afterAll(async () => {
  await Promise.all([plain.close(), below.close()]);
  rmSync(folder, { recursive: true });
});

/** Asks for an address as it stands; `fetch` would tidy away the dots that a prying visitor types. */
function ask(server: { origin: string }, address: string, method = 'GET') {
  const { hostname, port } = new URL(server.origin);
  return new Promise<{ status: number | undefined; type: string | undefined; to: string | undefined; body: string }>(
    (resolve, reject) => {
      request({ hostname, port, path: address, method }, (response) => {
        let body = '';
        response.on('data', (piece: Buffer) => (body += piece.toString()));
        response.on('end', () =>
          resolve({
            status: response.statusCode,
            type: response.headers['content-type'],
            to: response.headers.location,
            body,
          }),
        );
      })
        .on('error', reject)
        .end();
    },
  );
}

test('a folder answers with its index, a file with its type', async () => {
  expect(await ask(plain, '/')).toMatchObject({ status: 200, type: 'text/html; charset=utf-8', body: 'home' });
  expect(await ask(plain, '/lessons/')).toMatchObject({ status: 200, body: 'lessons' });
  expect(await ask(plain, '/lessons/gr%C3%B6%C3%9Fe/')).toMatchObject({ status: 200, body: 'one lesson' });
  expect(await ask(plain, '/mark.svg')).toMatchObject({ status: 200, type: 'image/svg+xml' });
  expect(await ask(plain, '/mark.svg', 'HEAD')).toMatchObject({ status: 200, body: '' });
});

test('a folder without its closing slash moves on, and keeps what follows the question mark', async () => {
  expect(await ask(plain, '/lessons?paper=unryu')).toMatchObject({ status: 301, to: '/lessons/?paper=unryu' });
});

test('an unknown address shows the page for it, with status 404', async () => {
  for (const address of ['/nowhere/', '/%', '//[', '/lessons/nowhere', '/mark.svg/']) {
    expect(await ask(plain, address), address).toMatchObject({ status: 404, body: 'no page here' });
  }
});

test('nothing from outside the folder is given out', async () => {
  for (const address of ['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/lessons/../../secret.txt']) {
    expect(await ask(plain, address), address).toMatchObject({ status: 404, body: 'no page here' });
  }
  expect(await ask(plain, '/', 'POST')).toMatchObject({ status: 405 });
});

test('what was squeezed at build goes out squeezed, to those who can read it', async () => {
  const sent = async (accepted: string) => {
    const response = await fetch(`${plain.url}long.txt`, { headers: { 'Accept-Encoding': accepted } });
    return [response.headers.get('content-encoding'), response.headers.get('content-type'), await response.text()];
  };
  const text = 'text/plain; charset=utf-8';
  expect(await sent('gzip, deflate, br')).toEqual(['br', text, 'long']);
  expect(await sent('gzip')).toEqual(['gzip', text, 'long']);
  expect(await sent('br;q=0, gzip;q=0.5')).toEqual(['gzip', text, 'long']);
  expect(await sent('identity')).toEqual([null, text, 'long']);
});

test('under a sub-path only the sub-path answers', async () => {
  expect(below.url).toBe(`${below.origin}/paper/`);
  expect(await ask(below, '/paper')).toMatchObject({ status: 301, to: '/paper/' });
  expect(await ask(below, '/paper/lessons/')).toMatchObject({ status: 200, body: 'lessons' });
  expect(await ask(below, '/lessons/')).toMatchObject({ status: 404 });
});

test('a sub-path may be written with or without its slashes', () => {
  expect(['', '/', 'paper', '/paper', '/paper/', 'a/b/'].map(asBase)).toEqual([
    ...['/', '/', '/paper/', '/paper/', '/paper/', '/a/b/'],
  ]);
});
