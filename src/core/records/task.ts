/**
 * What is being done with the sheet. A task says who gets the glue as a rule, whether anybody lifts the sheet
 * again, and what the joint has to bear. The shares and weights are judgements of ours from common practice;
 * the page "How the model works" shows them.
 */

export const TASKS = [
  'cover',
  'paste-down',
  'line-spine',
  'join-boards',
  'tip-in',
  'mend',
  'line-sheet',
  'laminate',
  'hinge',
  'mount',
  'label',
  'decorate',
] as const;
export type Task = (typeof TASKS)[number];

/** Who gets the glue: the sheet, the sheet pasted out on glass or film and lifted over, what it goes on, or both. */
export type Face = 'sheet' | 'sheet-on-support' | 'ground' | 'both';

export interface TaskTraits {
  /** in a sentence: "cover a board with it" */
  readonly says: string;
  /** faces that may be glued, each with how usual it is, 0–1 */
  readonly faces: Partial<Readonly<Record<Face, number>>>;
  /** done with a small brush, a strip or a tab at a time */
  readonly small: boolean;
  /** 0 nobody lifts the sheet again … 1 everybody wants to be able to */
  readonly secondGo: number;
  /** share of the time to place it for which it has to slide */
  readonly slide: number;
  /** what the joint bears, as a multiple of that of a 100 g/m² sheet on board */
  readonly load: number;
  /** how far that grows with the weight of the sheet: 0 not at all, 1 as its square root */
  readonly springs: number;
  /** how much it matters that edges stay down at once, 0–1 */
  readonly grab: number;
  /** how much it matters that nothing comes through, 0–1 */
  readonly strike: number;
  /** share left to what water does not undo, or undoes in part, though nobody asked */
  readonly undo: { readonly no: number; readonly partly: number };
  /** share left to a film that is less than flexible, or stiff, though nobody asked */
  readonly stiff: { readonly partly: number; readonly no: number };
  /** share left to a film that damp softens in part, or lets go, though nobody asked: what is handled meets damp hands */
  readonly damp: { readonly partly: number; readonly no: number };
  /** bow that is let pass, as a multiple of the usual: less where the work is there to be looked at flat */
  readonly bow: number;
  /** share left to a film that is rolled down, which wants a flat face; left out: all of it */
  readonly films?: number;
  /** whether the other side is lined too, unless told otherwise */
  readonly lined: boolean;
  /** mm */
  readonly usual: { readonly widthMm: number; readonly heightMm: number };
}

const KEPT = { no: 1, partly: 1 };
const BENDS = { partly: 0.95, no: 0.85 };
const HARDLY_BENDS = { partly: 0.99, no: 0.95 };
const DRY = { partly: 1, no: 1 };
// What is decorated is gone over the top with the same, and that skin meets hands and cloths.
const HANDLED = { partly: 0.95, no: 0.85 };

export const TASK_TRAITS: Readonly<Record<Task, TaskTraits>> = {
  cover: {
    says: 'cover a board with it',
    faces: { sheet: 1, ground: 0.93 },
    small: false,
    secondGo: 0.7,
    slide: 1,
    load: 0.85,
    springs: 0.6,
    grab: 0.4,
    strike: 1,
    undo: KEPT,
    stiff: BENDS,
    damp: DRY,
    bow: 1,
    // turn-ins and corners are worked while the glue still slides
    films: 0.75,
    lined: true,
    usual: { widthMm: 210, heightMm: 150 },
  },
  'paste-down': {
    says: 'paste an endpaper down',
    faces: { sheet: 1, ground: 0.93 },
    small: false,
    secondGo: 0,
    slide: 1,
    load: 1,
    springs: 0.5,
    grab: 0.25,
    strike: 0.5,
    undo: KEPT,
    stiff: BENDS,
    damp: DRY,
    bow: 1,
    lined: true,
    usual: { widthMm: 148, heightMm: 210 },
  },
  'line-spine': {
    says: 'line a spine with it',
    faces: { ground: 1, sheet: 0.97 },
    // a back is glued generously, with the brush that glues a sheet
    small: false,
    secondGo: 0,
    slide: 0.3,
    load: 1,
    springs: 0.5,
    grab: 0.3,
    // what comes through meets the next lining, or the cover: nobody sees a back
    strike: 0,
    // a new back is lined to last; who lines an old one says that it must come undone
    undo: { no: 0.88, partly: 0.95 },
    // it bends every time the book is opened
    stiff: { partly: 0.9, no: 0.75 },
    damp: DRY,
    bow: 1,
    lined: true,
    usual: { widthMm: 30, heightMm: 220 },
  },
  'join-boards': {
    says: 'join boards edge to face',
    faces: { sheet: 1 },
    small: true,
    secondGo: 0,
    slide: 0.4,
    load: 1.8,
    springs: 0,
    grab: 0.7,
    strike: 0,
    undo: KEPT,
    stiff: { partly: 0.98, no: 0.9 },
    damp: DRY,
    bow: 1,
    lined: true,
    usual: { widthMm: 5, heightMm: 300 },
  },
  'tip-in': {
    says: 'tip a leaf in by a narrow strip',
    faces: { sheet: 1, ground: 0.95 },
    small: true,
    secondGo: 0,
    slide: 0.2,
    load: 0.8,
    springs: 0.3,
    grab: 0.3,
    strike: 0.4,
    undo: { no: 0.95, partly: 0.98 },
    stiff: BENDS,
    damp: DRY,
    bow: 1,
    films: 0.8,
    lined: true,
    usual: { widthMm: 6, heightMm: 220 },
  },
  mend: {
    says: 'mend a tear with it',
    faces: { 'sheet-on-support': 1, sheet: 0.93, ground: 0.85 },
    small: true,
    secondGo: 0,
    slide: 0.15,
    load: 0.35,
    springs: 0,
    grab: 0,
    strike: 0.6,
    undo: { no: 0.7, partly: 0.85 },
    stiff: BENDS,
    damp: DRY,
    bow: 1,
    lined: false,
    usual: { widthMm: 10, heightMm: 120 },
  },
  'line-sheet': {
    says: 'line a sheet with it',
    faces: { 'sheet-on-support': 1, sheet: 0.95 },
    small: false,
    secondGo: 0.2,
    slide: 0.4,
    load: 0.6,
    springs: 0,
    grab: 0,
    strike: 0.3,
    undo: { no: 0.6, partly: 0.85 },
    // a lining that is stiffer than the sheet cracks it where it bends
    stiff: { partly: 0.9, no: 0.75 },
    damp: DRY,
    bow: 1,
    lined: false,
    usual: { widthMm: 210, heightMm: 297 },
  },
  laminate: {
    says: 'back something with it',
    faces: { sheet: 1, 'sheet-on-support': 0.97, ground: 0.9 },
    small: false,
    secondGo: 0.2,
    slide: 0.4,
    load: 0.75,
    springs: 0.3,
    grab: 0.1,
    strike: 1,
    undo: KEPT,
    stiff: BENDS,
    damp: DRY,
    bow: 1,
    lined: false,
    usual: { widthMm: 250, heightMm: 350 },
  },
  hinge: {
    says: 'hang a sheet with it',
    faces: { sheet: 1, 'sheet-on-support': 1 },
    small: true,
    secondGo: 0,
    slide: 0.2,
    load: 1.1,
    springs: 0,
    grab: 0,
    strike: 0.3,
    // a hinge is there to be taken off again
    undo: { no: 0.3, partly: 0.6 },
    stiff: HARDLY_BENDS,
    damp: DRY,
    bow: 1,
    lined: false,
    usual: { widthMm: 30, heightMm: 15 },
  },
  mount: {
    says: 'mount it all over',
    faces: { sheet: 1, ground: 0.95 },
    small: false,
    secondGo: 0.4,
    slide: 0.8,
    load: 0.8,
    springs: 0.5,
    grab: 0.1,
    strike: 0.7,
    undo: { no: 0.92, partly: 0.97 },
    stiff: HARDLY_BENDS,
    damp: DRY,
    bow: 0.6,
    lined: false,
    usual: { widthMm: 200, heightMm: 250 },
  },
  label: {
    says: 'stick it on as a label',
    faces: { sheet: 1 },
    small: false,
    secondGo: 0.3,
    slide: 0.7,
    load: 0.85,
    springs: 0.5,
    grab: 0.5,
    strike: 0.6,
    undo: KEPT,
    stiff: BENDS,
    damp: DRY,
    bow: 1,
    lined: true,
    usual: { widthMm: 35, heightMm: 60 },
  },
  decorate: {
    says: 'decorate something with it',
    faces: { ground: 1, sheet: 0.9 },
    small: false,
    secondGo: 0.1,
    slide: 0.8,
    load: 0.7,
    springs: 0.5,
    grab: 0.3,
    strike: 0.4,
    undo: KEPT,
    stiff: HARDLY_BENDS,
    damp: HANDLED,
    bow: 1,
    // what is decorated is often round or rough, and is often gone over the top as well
    films: 0.75,
    lined: true,
    usual: { widthMm: 100, heightMm: 100 },
  },
};
