/** Besides covering: what people ask how to glue, with the papers it is done with, in the words they would search for. */
import type { Task } from '../../core/records/task';
import { lowerFirst } from '../../core/base/format';
import { catalogue } from '../../data/catalogue';
import { shortName } from '../plain-name';

export interface AskedTask {
  /** of the list of its pages: "Mending a tear" */
  readonly doing: string;
  /** before the paper’s name: "Mending a tear with" */
  readonly title: (paper: string) => string;
  /** before the paper’s id in the address */
  readonly address: string;
  /** ids, the commonest first */
  readonly papers: readonly string[];
  /** id of the lesson that says more */
  readonly lesson: string;
}

export const ASKED_TASKS: Readonly<Partial<Record<Task, AskedTask>>> = {
  'paste-down': {
    doing: 'Pasting down an endpaper',
    title: (paper) => `Pasting down an endpaper of ${paper}`,
    address: 'pasting-down',
    papers: ['endleaf', 'wove-text', 'laid-text', 'marbled', 'paste-paper', 'handmade-cotton', 'chiyogami'],
    lesson: 'pasting-down',
  },
  'line-spine': {
    doing: 'Lining a spine',
    title: (paper) => `Lining a spine with ${paper}`,
    address: 'lining-a-spine-with',
    papers: ['kozo-medium', 'unbacked-cloth', 'kraft', 'wove-text'],
    lesson: 'lining',
  },
  'join-boards': {
    doing: 'Joining boards into a box',
    title: () => 'Joining grey boards into a box',
    address: 'joining',
    papers: ['grey-board-as-sheet'],
    lesson: 'stretching-pva',
  },
  'tip-in': {
    doing: 'Tipping in a leaf',
    title: (paper) => `Tipping in a leaf of ${paper}`,
    address: 'tipping-in',
    papers: ['wove-text', 'coated-art', 'inkjet-print', 'photo-print-rc'],
    lesson: 'undoing',
  },
  mend: {
    doing: 'Mending a tear',
    title: (paper) => `Mending a tear with ${paper}`,
    address: 'mending-a-tear-with',
    papers: ['kozo-tissue', 'abaca-tissue', 'kozo-medium', 'gampi', 'mitsumata'],
    lesson: 'mending',
  },
  'line-sheet': {
    doing: 'Lining a weak sheet',
    title: (paper) => `Lining a weak sheet with ${paper}`,
    address: 'lining-a-sheet-with',
    papers: ['kozo-medium', 'kozo-tissue', 'abaca-tissue'],
    lesson: 'lining',
  },
  laminate: {
    doing: 'Backing cloth with paper',
    title: (paper) => `Backing cloth with ${paper}`,
    address: 'backing-cloth-with',
    papers: ['kozo-medium', 'lining-paper'],
    lesson: 'lining',
  },
  hinge: {
    doing: 'Hinging a print',
    title: (paper) => `Hinging a print with ${paper}`,
    address: 'hinging-a-print-with',
    papers: ['kozo-medium', 'kozo-tissue', 'mitsumata'],
    lesson: 'hinging-and-mounting',
  },
  mount: {
    doing: 'Mounting a print on board',
    title: (paper) => `Mounting on board: ${paper}`,
    address: 'mounting',
    papers: ['inkjet-print', 'photo-print-rc', 'photo-print-fibre', 'watercolour', 'coated-art', 'newsprint'],
    lesson: 'hinging-and-mounting',
  },
  label: {
    doing: 'Sticking on a label',
    title: (paper) => `Sticking a label of ${paper} on book cloth`,
    address: 'a-label-of',
    papers: ['laid-text', 'copy', 'inkjet-print', 'paper-backed-cloth'],
    lesson: 'spreading',
  },
  decorate: {
    doing: 'Decorating a glass or a jar',
    title: (paper) => `Decorating glass with ${paper}`,
    address: 'decorating-glass-with',
    papers: ['gift-tissue', 'lokta-light', 'chiyogami', 'newsprint', 'unryu'],
    lesson: 'adhesives-in-families',
  },
};

/** Each of them that is asked with a paper; all where none is named. */
export const tasksAsked = (paper?: string): readonly (readonly [Task, AskedTask])[] =>
  (Object.entries(ASKED_TASKS) as [Task, AskedTask][]).filter(
    ([, { papers }]) => paper === undefined || papers.includes(paper),
  );

/** "Mending a tear with kozo tissue" */
export function taskTitle({ title }: AskedTask, paper: string): string {
  const sheet = catalogue.papers.get(paper);
  if (!sheet) throw new Error(`answers: no paper "${paper}"`);
  // "Kozo, medium" as a sentence says it: "medium kozo"
  const name = lowerFirst(shortName(sheet.name)).replace(/^([a-z]+), ([a-z]+)$/, '$2 $1');
  return title(name);
}
