// @ts-check

/**
 * Remark plugin: a link that a lesson writes from the root, `[the chooser](/choose/)`, holds under
 * whatever sub-path the site is published at.
 * @param {{ base: string }} options
 */
export function baseLinks({ base }) {
  const folder = base.replace(/\/$/, '');
  return (/** @type {unknown} */ tree) => prefixIn(tree, folder);
}

/** @param {any} node @param {string} folder */
function prefixIn(node, folder) {
  if (node.type === 'link' && /^\/(?!\/)/.test(node.url)) node.url = folder + node.url;
  for (const child of node.children ?? []) prefixIn(child, folder);
}
