/** The workshop sheet over this site's own records. */
import { DEFAULT_CLASS, CLASS_FIELDS, type ClassPlan } from '../../core/class/plan';
import { classSheet, classToCut } from '../../core/class/sheet';
import { readTexts, textsOf } from '../../core/link/fields';
import { catalogue } from '../../data/catalogue';
import { createCutAnswers } from '../cut/cut';
import { madeAhead } from '../shared/precompute';
import { isTyped, textsTyped, type TypedInto } from '../shared/typed';
import { createClass, type ClassStore } from './class';

const sheets = createCutAnswers();
let start = DEFAULT_CLASS;
const made = madeAhead(() => createClass(catalogue, start, sheets));

/** The class that was typed before the page woke; none where nothing was, or where that makes no class. */
async function classTyped(into: TypedInto): Promise<ClassPlan | undefined> {
  const typed = textsTyped(into, CLASS_FIELDS);
  // another unit writes every length anew
  if (!isTyped(typed) || 'unit' in typed) return undefined;
  const texts = { ...textsOf(DEFAULT_CLASS, CLASS_FIELDS), ...typed };
  const { plan, problems } = readTexts(texts, CLASS_FIELDS, DEFAULT_CLASS);
  const toCut = problems.length === 0 ? classToCut(plan) : undefined;
  if (!toCut) return undefined;
  await sheets.prepare(toCut);
  return classSheet(plan, catalogue, sheets.now).ok ? plan : undefined;
}

/** Works out the first answer before the page needs it: that to what was typed by then, or else the usual one. */
export async function prepareClass(into: TypedInto): Promise<void> {
  start = (await classTyped(into)) ?? DEFAULT_CLASS;
  if (start === DEFAULT_CLASS) await sheets.prepare(classToCut(DEFAULT_CLASS)!);
  await made.prepare();
}

export const openClass = (): ClassStore => made.take();
