import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    /** Wakes an island when it is first used, at once, where a job is known, or after an answer; see src/islands/parts/wake-on-use.mjs. */
    'client:use'?: boolean | 'now' | 'known' | 'then';
  }
}
