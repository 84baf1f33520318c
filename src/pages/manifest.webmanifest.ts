/** What a phone needs to know to put the site among its programs. */
import type { APIRoute } from 'astro';
import { href } from '../components/href';
import { ICONS } from '../components/share/icon';
import { SITE } from '../site';

export const GET: APIRoute = () =>
  new Response(
    JSON.stringify({
      name: SITE.name,
      short_name: SITE.shortName,
      description: SITE.description,
      lang: 'en-GB',
      id: href('/'),
      start_url: href('/'),
      scope: href('/'),
      display: 'standalone',
      background_color: SITE.colours.paper,
      theme_color: SITE.colours.paper,
      icons: Object.entries(ICONS)
        .filter(([id]) => id !== 'apple-touch')
        .map(([id, { size }]) => ({
          src: href(`/icons/${id}.png`),
          sizes: `${size}x${size}`,
          type: 'image/png',
          purpose: id.startsWith('maskable') ? 'maskable' : 'any',
        })),
    }),
    { headers: { 'Content-Type': 'application/manifest+json' } },
  );
