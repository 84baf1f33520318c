/** The sheets calculator of its own page. */
import { madeAhead } from '../shared/precompute';
import { createCut, type CutStore } from './cut';

const sheets = madeAhead(createCut);

/** Works out the first answer before the page needs it. */
export const prepareCut = sheets.prepare;

export const openCut = (): CutStore => sheets.take();
