import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    /** Wakes an island when it is first used, or at once; see src/build/wake-on-use.mjs. */
    'client:use'?: boolean | 'now';
  }
}
