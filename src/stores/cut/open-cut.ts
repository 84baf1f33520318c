/** The sheets calculator of its own page. */
import { DEFAULT_CUT } from '../../core/cut/plan';
import { madeAhead } from '../shared/precompute';
import { createCut, createCutAnswers, type CutStore } from './cut';

const answers = createCutAnswers();
const sheets = madeAhead(() => createCut(DEFAULT_CUT, answers));

/** Works out the first answer before the page needs it. */
export async function prepareCut(): Promise<void> {
  await answers.prepare(DEFAULT_CUT);
  await sheets.prepare();
}

export const openCut = (): CutStore => sheets.take();
