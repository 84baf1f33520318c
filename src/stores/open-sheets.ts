/** The sheets calculator of its own page. */
import { madeAhead } from './made-ahead';
import { createSheets, type SheetsStore } from './sheets';

const sheets = madeAhead(createSheets);

/** Works out the first answer before the page needs it. */
export const prepareSheets = sheets.prepare;

export const openSheets = (): SheetsStore => sheets.take();
