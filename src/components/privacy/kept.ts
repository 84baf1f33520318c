/** Everything that the site writes on a reader's device. A test holds this against the code that writes. */
interface Kept {
  /** how its name begins, in the browser's list of stored data */
  readonly name: string;
  readonly where: 'local storage' | 'session storage' | 'database' | 'cache';
  readonly what: string;
  readonly goes: string;
}

const WITH_TRIAL = 'when you delete the trial on its shelf.';

export const KEPT: readonly Kept[] = [
  {
    name: 'open-time:trial:',
    where: 'local storage',
    what: 'A trial that you planned or read in: papers, adhesives, results, notes, and the name of who judged, where you gave one.',
    goes: WITH_TRIAL,
  },
  {
    name: 'open-time:undo:',
    where: 'local storage',
    what: 'The last steps of a trial, so that you can take them back.',
    goes: WITH_TRIAL,
  },
  {
    name: 'open-time:plan',
    where: 'local storage',
    what: 'The plan of a trial as you were typing it; where it began with a link, once more in session storage, until you close the tab.',
    goes: 'when the trial is drawn.',
  },
  {
    name: 'open-time:bench',
    where: 'local storage',
    what: 'The bench that you measured and kept: its coat, solids, board and grab, and the name you gave it.',
    goes: 'when you delete it on the page of your bench.',
  },
  {
    name: 'open-time:who',
    where: 'local storage',
    what: 'The name that you gave as the one who judges, to save you typing it again.',
    goes: 'when you empty that field, or with your browser’s data for this site.',
  },
  {
    name: 'open-time:blind',
    where: 'local storage',
    what: 'Whether the adhesive is hidden while you judge.',
    goes: 'with your browser’s data for this site.',
  },
  {
    name: 'open-time:papers',
    where: 'local storage',
    what: 'The papers that you measured and kept: their names and figures.',
    goes: 'when you remove the paper, on the page where you kept it.',
  },
  {
    name: 'open-time:answered',
    where: 'local storage',
    what: 'Which questions of the lessons you have answered right.',
    goes: 'when you press “Forget it” at the questions of a lesson.',
  },
  {
    name: 'open-time:evidence',
    where: 'local storage',
    what: 'Whether your own trials count in the chooser.',
    goes: 'with your browser’s data for this site.',
  },
  {
    name: 'open-time:job',
    where: 'session storage',
    what: 'The job that you said in a calculator, so that the other calculators know it too.',
    goes: 'when you close the tab, or press Start afresh.',
  },
  {
    name: 'open-time-photos',
    where: 'database',
    what: 'The photos of swatches that you took, made smaller.',
    goes: WITH_TRIAL,
  },
  {
    name: 'open-time-precache',
    where: 'cache',
    what: 'The calculators, for use without a network.',
    goes: 'replaced when the site changes.',
  },
  {
    name: 'open-time-rest',
    where: 'cache',
    what: 'The pages that you opened, for use without a network, or all of them if you asked for that.',
    goes: 'replaced when the site changes.',
  },
  {
    name: 'open-time-earlier',
    where: 'cache',
    what: 'A few scripts of earlier versions, for pages that were open while the site changed.',
    goes: 'the oldest go first, as new ones come.',
  },
];
