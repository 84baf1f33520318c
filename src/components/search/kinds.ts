/** What kind of page stands at an address, for the search to name and to sift by. */
const KINDS: Readonly<Record<string, string>> = {
  lessons: 'Lessons',
  shelf: 'Shelf',
  answers: 'Answers',
  glossary: 'Glossary',
};

/** `path` without the site's sub-path: "lessons/grain/" */
export function pageKindOf(path: string): string {
  return KINDS[path.split('/')[0] ?? ''] ?? 'Other pages';
}

/** Lists of what has pages of its own would come up for everything, and so are left out. */
const LISTS = [
  '',
  'answers/',
  'lessons/',
  'search/',
  'shelf/',
  'shelf/papers/',
  'shelf/adhesives/',
  'shelf/substrates/',
  'shelf/plates/',
  '404/',
];
export const isSearched = (path: string): boolean => !LISTS.includes(path);
