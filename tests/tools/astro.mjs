// @ts-check
/** Runs Astro with its telemetry off, on every system alike: nothing here phones home. */
process.env['ASTRO_TELEMETRY_DISABLED'] = '1';
await import(new URL('../../node_modules/astro/astro.js', import.meta.url).href);
