// @ts-check
/** What makes the build quicker and changes nothing that is built. */
const ISLAND = /\/src\/islands\/\w+\/\w+\.tsx$/;

/** @returns {import('astro').AstroIntegration} */
export function quick() {
  return {
    name: 'quick',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => void updateConfig({ vite: { plugins: [taggedIslands()] } }),
      'astro:build:setup': ({ target, updateConfig }) => {
        // the pages are written by code that is then thrown away: it need not be small
        if (target === 'server') updateConfig({ build: { rollupOptions: { treeshake: false } } });
        else updateConfig({ build: { reportCompressedSize: false } });
      },
    },
  };
}

/**
 * Tells which renderer an island is for. Otherwise each one on offer is asked, and each tries by rendering it: a
 * calculator would be worked out three times for every page it stands on.
 */
function taggedIslands() {
  return {
    name: 'tagged-islands',
    /** @param {string} code @param {string} id @param {{ ssr?: boolean | undefined }} [options] */
    transform(code, id, options) {
      const island = options?.ssr && ISLAND.test(id) && /^export default function (\w+)/m.exec(code)?.[1];
      if (!island) return undefined;
      return { code: `${code}\n${island}[Symbol.for('astro:renderer')] = '@astrojs/preact';\n`, map: null };
    },
  };
}
