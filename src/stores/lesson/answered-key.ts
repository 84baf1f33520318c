/** The name under which answers are kept; by itself, so that a page can look for it without fetching the rest. */
export const ANSWERED_KEY = 'open-time:answered';
