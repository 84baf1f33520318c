import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    /** Wakes an island when it is first used, at once, or soon; see src/islands/parts/wake-on-use.mjs. */
    'client:use'?: boolean | 'now' | 'soon';
  }
}
