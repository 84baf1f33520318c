// @ts-check
/** Runs Astro with its telemetry and its search for updates off, on every system alike: nothing phones home. */
process.env['ASTRO_TELEMETRY_DISABLED'] = '1';
process.env['ASTRO_DISABLE_UPDATE_CHECK'] = 'true';
await import(new URL('../../node_modules/astro/astro.js', import.meta.url).href);
