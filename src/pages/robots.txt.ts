/** What robots may read: everything. */
import type { APIRoute } from 'astro';
import { href } from '../components/href';

export const GET: APIRoute = ({ site }) =>
  new Response(`User-agent: *\nAllow: /\n\nSitemap: ${new URL(href('/sitemap.xml'), site).href}\n`);
