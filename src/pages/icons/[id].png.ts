/** The icons of the installed site. */
import type { APIRoute } from 'astro';
import { ICONS, iconPng, type Icon } from '../../components/share/icon';

export const getStaticPaths = () => Object.entries(ICONS).map(([id, icon]) => ({ params: { id }, props: { icon } }));

export const GET: APIRoute = async ({ props }) =>
  new Response(new Uint8Array(await iconPng(props['icon'] as Icon)), { headers: { 'Content-Type': 'image/png' } });
