/** What stands on the mixing bench, by id: what is made up, what is stretched, and with what. */

export const POWDERS = ['methylcellulose', 'methylcellulose-400', 'gelatine'] as const;
export const STARCHES = ['wheat-starch', 'rice-starch'] as const;
export const BASES = ['pva', 'pva-thick', 'eva'] as const;
export const EXTENDERS = [
  'methylcellulose-1-5',
  'methylcellulose-2-5',
  'methylcellulose-4',
  'wheat-starch-paste-thick',
  'wheat-starch-paste-16',
  'wheat-starch-paste-12',
  'wheat-starch-paste-thin',
  'water',
] as const;
