/** What each calculator is called, everywhere, and what a person who opens it wants to know. */

export interface Room {
  readonly name: string;
  /** as that person would ask it */
  readonly asks: string;
  /** as the next step after another room's answer */
  readonly next: string;
  /** of its page, below the site's own address */
  readonly path: string;
}

/** In the order in which a piece of work asks for them. */
export const ROOMS = {
  measure: {
    name: 'Know your paper',
    asks: 'How heavy and thick is my paper, how fast does it drink, and which way does its grain run?',
    next: 'Measure your paper',
    path: 'paper/',
  },
  choose: {
    name: 'Choose an adhesive',
    asks: 'Which adhesive suits my paper and what it goes on, and how do I use it?',
    next: 'Which adhesive',
    path: 'choose/',
  },
  bench: {
    name: 'My bench',
    asks: 'How thick is my own coat, what is in my glue, how does my board drink, and how soon does it grab?',
    next: 'Measure your own bench',
    path: 'bench/',
  },
  mix: { name: 'Mix an adhesive', asks: 'What do I weigh out, and how do I make it up?', next: 'Mix it', path: 'mix/' },
  cover: {
    name: 'How much adhesive will it take?',
    asks: 'How much adhesive do I need for these pieces, or for a whole class?',
    next: 'How much it takes',
    path: 'cover/',
  },
  flat: {
    name: 'Will it lie flat?',
    asks: 'Will my covered board warp, which way, and what would help?',
    next: 'Will it lie flat',
    path: 'flat/',
  },
  make: {
    name: 'Measures for a book or a box',
    asks: 'What size do I cut each piece of a book or a box?',
    next: 'Measure a book or a box',
    path: 'make/',
  },
  cut: {
    name: 'Cut it from sheets',
    asks: 'How many sheets do I buy, and where do I cut them?',
    next: 'Cut it from sheets',
    path: 'cut/',
  },
  class: {
    name: 'Plan a class',
    asks: 'What do I buy and mix for a group, what do I do when, and what does each student get?',
    next: 'Put it in a class',
    path: 'workshop/',
  },
  trial: {
    name: 'Swatch trials',
    asks: 'Which of these really works with my own paper?',
    next: 'Try it on a swatch',
    path: 'trials/',
  },
} as const satisfies Readonly<Record<string, Room>>;
export type RoomId = keyof typeof ROOMS;
