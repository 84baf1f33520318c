/**
 * The address of a page of this site, under whatever sub-path the site is published at.
 * `href('/choose/')` → `/choose/`, or `/open-time/choose/` with BASE_PATH=/open-time.
 */
export function href(path: `/${string}`): string {
  return import.meta.env.BASE_URL.replace(/\/$/, '') + path;
}
