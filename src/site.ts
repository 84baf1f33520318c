/** What the site is called and what it says of itself: the one place to change for a site of your own. */
export const SITE = {
  name: 'Open Time',
  /** at most twelve letters: what stands under the icon on a phone */
  shortName: 'Open Time',
  description: 'Lessons and calculators for people who glue paper to things.',
  /** the page's own colours, for what is drawn outside the page: keep in step with styles/tokens.css */
  colours: { paper: '#fcfbf8', paperDark: '#1f201e', accent: '#1d5a49' },
} as const;
