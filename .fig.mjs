import { chromium } from 'playwright-core'; import bundled from '@sparticuz/chromium'; import { spawn } from 'node:child_process';
const srv = spawn('node', ['tests/tools/serve.mjs'], { env: { ...process.env, PORT: '4391' }, stdio: 'pipe' }); await new Promise(r=>setTimeout(r,3000));
const b = await chromium.launch({ executablePath: await bundled.executablePath(), args: ['--no-sandbox','--disable-gpu'] });
const page = await b.newPage({ viewport: { width: 390, height: 844 } });
for (const l of ['adhesives-in-families','making-methylcellulose','starch-paste','stretching-pva','spreading']) { await page.goto('http://localhost:4391/lessons/'+l+'/'); const f = page.locator('figure.plate').first(); await f.scrollIntoViewIfNeeded(); await f.screenshot({ path: `/tmp/mixshots/f-${l}.png` }); }
await b.close(); srv.kill();
