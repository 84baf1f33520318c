/**
 * What each task asks, in the words of somebody who is doing it: how the sheet and the ground are called, which
 * questions matter, and what is usual. A question that does not matter to a task is not asked; what a link or a tick
 * has said already stays in view.
 */
import { TASK_TRAITS, type Task } from '../records/task';
import type { Need } from './job';

export interface TaskWords {
  /** as its maker would say it: "Cover a board, a case or a box" */
  readonly doing: string;
  /** the question after the sheet */
  readonly sheet: string;
  /** the question after what it goes on */
  readonly ground: string;
  /** the two sides of what gets glue */
  readonly sides: readonly [width: string, height: string];
  /** needs that this task turns on, the commonest first */
  readonly needs: readonly Need[];
  /** whether it matters that the other side is lined too */
  readonly asksLined: boolean;
  /** whether it matters how long somebody needs to place it */
  readonly asksPlacing: boolean;
  /** ids of the sheet and the ground that stand there when the task is picked */
  readonly usual: { readonly family: string; readonly substrate: string };
}

const SIDES = ['Width', 'Height'] as const;
const STRIP = ['Width of the strip', 'Length of the strip'] as const;

export const TASK_WORDS: Readonly<Record<Task, TaskWords>> = {
  cover: {
    doing: 'Cover a board, a case or a box',
    sheet: 'Your paper is most like',
    ground: 'It goes on',
    sides: SIDES,
    needs: [
      'flat',
      'slow',
      'colours',
      'no-strike-through',
      'flexes',
      'long-lived',
      'damp',
      'strong',
      'children',
      'no-heat',
    ],
    asksLined: true,
    asksPlacing: true,
    usual: { family: 'chiyogami', substrate: 'binders-board' },
  },
  'paste-down': {
    doing: 'Paste an endpaper down',
    sheet: 'Your endpaper is most like',
    ground: 'The board is',
    sides: SIDES,
    needs: ['flat', 'flexes', 'slow', 'long-lived', 'undo', 'colours', 'no-heat'],
    asksLined: false,
    asksPlacing: true,
    usual: { family: 'endleaf', substrate: 'binders-board' },
  },
  'line-spine': {
    doing: 'Line a spine',
    sheet: 'The lining is most like',
    ground: 'It goes on',
    sides: ['Width of the spine', 'Height of the spine'],
    needs: ['flexes', 'undo', 'long-lived', 'quick', 'strong', 'no-heat'],
    asksLined: false,
    asksPlacing: false,
    usual: { family: 'kozo-medium', substrate: 'spine' },
  },
  'join-boards': {
    doing: 'Join boards into a box',
    sheet: 'The board you glue is most like',
    ground: 'It goes against',
    sides: ['Thickness of the edge', 'Length of the joint'],
    needs: ['strong', 'quick', 'damp', 'children', 'no-heat'],
    asksLined: false,
    asksPlacing: false,
    usual: { family: 'grey-board-as-sheet', substrate: 'binders-board' },
  },
  'tip-in': {
    doing: 'Tip in a leaf by a narrow strip',
    sheet: 'The leaf is most like',
    ground: 'It goes on',
    sides: ['Width of the glued strip', 'Length of the glued strip'],
    needs: ['undo', 'flat', 'flexes', 'long-lived', 'quick', 'colours'],
    asksLined: false,
    asksPlacing: false,
    usual: { family: 'wove-text', substrate: 'text-block' },
  },
  mend: {
    doing: 'Mend a tear',
    sheet: 'You mend it with something like',
    ground: 'The torn leaf is',
    sides: STRIP,
    needs: ['undo', 'long-lived', 'flat', 'colours', 'valued', 'no-heat'],
    asksLined: false,
    asksPlacing: false,
    usual: { family: 'kozo-tissue', substrate: 'text-block' },
  },
  'line-sheet': {
    doing: 'Line a weak sheet from behind',
    sheet: 'The lining is most like',
    ground: 'The weak sheet is',
    sides: SIDES,
    needs: ['undo', 'long-lived', 'flat', 'colours', 'slow', 'valued'],
    asksLined: false,
    asksPlacing: true,
    usual: { family: 'kozo-medium', substrate: 'text-block' },
  },
  laminate: {
    doing: 'Back a paper or a cloth with another',
    sheet: 'The backing is most like',
    ground: 'It goes behind',
    sides: SIDES,
    needs: ['no-strike-through', 'flat', 'flexes', 'slow', 'colours', 'long-lived'],
    asksLined: false,
    asksPlacing: true,
    usual: { family: 'kozo-medium', substrate: 'fabric' },
  },
  hinge: {
    doing: 'Hang a print by hinges',
    sheet: 'The hinge is most like',
    ground: 'It goes on',
    sides: ['Width of the hinge', 'Height of the hinge'],
    needs: ['undo', 'long-lived', 'strong', 'flat', 'colours', 'valued'],
    asksLined: false,
    asksPlacing: false,
    usual: { family: 'kozo-medium', substrate: 'mount-board' },
  },
  mount: {
    doing: 'Mount a print all over on board',
    sheet: 'The print is most like',
    ground: 'It goes on',
    sides: SIDES,
    needs: ['flat', 'long-lived', 'undo', 'colours', 'no-strike-through', 'slow', 'no-heat', 'valued'],
    asksLined: true,
    asksPlacing: true,
    usual: { family: 'inkjet-print', substrate: 'mount-board' },
  },
  label: {
    doing: 'Stick on a label',
    sheet: 'The label is most like',
    ground: 'It goes on',
    sides: SIDES,
    needs: ['quick', 'flexes', 'long-lived', 'undo', 'damp', 'no-strike-through', 'colours'],
    asksLined: false,
    asksPlacing: false,
    usual: { family: 'laid-text', substrate: 'book-cloth' },
  },
  decorate: {
    doing: 'Decorate a thing with thin paper',
    sheet: 'Your paper is most like',
    ground: 'It goes on',
    sides: SIDES,
    needs: ['damp', 'colours', 'children', 'slow', 'quick', 'food', 'no-heat'],
    asksLined: false,
    asksPlacing: false,
    usual: { family: 'gift-tissue', substrate: 'glass' },
  },
};

/** What stands in the form when a task is picked: its usual sheet, ground and size. */
export const usualOfTask = (task: Task) => ({ ...TASK_WORDS[task].usual, ...TASK_TRAITS[task].usual });
