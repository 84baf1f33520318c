import { chromium } from 'playwright-core';
import bundled from '@sparticuz/chromium';
import { spawn } from 'node:child_process';
const port = 4391;
const srv = spawn('node', ['tests/tools/serve.mjs'], { env: { ...process.env, PORT: String(port) }, stdio: 'pipe' });
let base; await new Promise((r) => { srv.stdout.on('data', (d) => { const m = /http:\/\/[^\s]+/.exec(String(d)); if (m) { base = m[0].replace(/\/$/, ''); r(); } }); setTimeout(r, 3000); });
base ??= 'http://localhost:' + port;
const browser = await chromium.launch({ executablePath: await bundled.executablePath(), args: ['--no-sandbox','--disable-gpu','--disable-background-networking','--disable-component-update','--disable-sync','--no-first-run'] });
const jobs = JSON.parse(process.argv[2]);
for (const { name, path, w, h, dark, full, js = true } of jobs) {
  const ctx = await browser.newContext({ viewport: { width: w, height: h }, colorScheme: dark ? 'dark' : 'light', javaScriptEnabled: js });
  const page = await ctx.newPage();
  page.on('console', (m) => m.type() === 'error' && console.log(name, 'console', m.text()));
  page.on('pageerror', (e) => console.log(name, 'error', String(e)));
  await page.goto(base + path); await page.waitForTimeout(900);
  await page.screenshot({ path: `/tmp/mixshots/${name}.png`, fullPage: !!full });
  await ctx.close();
}
await browser.close(); srv.kill();
