/** Tells search engines, in sitemap.xml, of every page that asks to be found (338 of 348). */

/** A page's own word for where it lives, so that the two cannot differ; nothing of one that asks not to be found. */
export const foundAt = (html: string): string | undefined =>
  /<meta name="robots" content="noindex/.test(html)
    ? undefined
    : /<link rel="canonical" href="([^"]+)"/.exec(html)?.[1];

export const sitemapOf = (addresses: readonly string[]): string =>
  [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...addresses.toSorted().map((address) => `  <url><loc>${address}</loc></url>`),
    '</urlset>\n',
  ].join('\n');
