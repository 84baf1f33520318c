/** Which records a field may name, and what they are called in "Choose … from the list." */
import type { Catalogue } from './records';

const among = (called: string, isOne: (id: string, catalogue: Catalogue) => boolean) => ({ called, isOne });

export const PAPER_KIND = among('a paper', (id, { papers }) => papers.has(id));
export const GROUND = among('what it goes on', (id, { substrates }) => substrates.has(id));
export const BOARD_KIND = among('a board', (id, { substrates }) => substrates.has(id));
export const TOOL = among('a tool', (id, { techniques }) => techniques.has(id));
export const ADHESIVE = among('an adhesive', (id, { adhesives }) => adhesives.has(id));
export const WET_ADHESIVE = among(
  'an adhesive that is spread',
  (id, { adhesives }) => adhesives.get(id)?.form === 'wet',
);
