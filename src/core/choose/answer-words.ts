/** The answer in a word and a sentence. */
import type { Ranked, Verdict } from './finding';
import { duration, durationSpan, figure, lowerFirst } from '../base/format';
import type { Catalogue } from '../records/records';

export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  sound: 'Sound',
  likely: 'Likely to work',
  'touch-and-go': 'Touch and go',
  unlikely: 'Unlikely to work',
  'ruled-out': 'Ruled out',
  refused: 'Not where food touches',
  defer: 'Ask a conservator first',
};

/** What a student can act on, in one or two sentences. */
export function answerSentence(choice: Ranked, catalogue: Catalogue): string {
  const adhesive = catalogue.adhesives.get(choice.adhesiveId)!;
  const { glueGoesOn, placeBeforeContact, coat } = choice.placement;
  const { p10, p90 } = choice.slipSeconds;
  if (choice.verdict === 'refused') return 'No answer: none of these is known to be safe where food touches it.';
  const verb = coat === undefined ? 'Use' : choice.placement.tool === 'fingertip' ? 'With a fingertip, put' : 'Put';
  const first = `${verb} ${adhesive.short} on ${glueGoesOn}`;
  const span = durationSpan(p10, p90);
  const time =
    p10 >= 3600 ? span : p90 < 1 ? 'less than a second' : p10 < 1 ? `at most about ${duration(p90)}` : `about ${span}`;
  const late = choice.slipSeconds.p50 < choice.facts.needed;
  const then = !placeBeforeContact
    ? `you have ${time} to move it`
    : late
      ? `get it in place before it touches, for it grabs ${p90 < 1 ? 'within a second' : p10 < 1 ? `within about ${duration(p90)}` : `in ${time}`}`
      : 'get it in place before it touches, for so light a sheet tears when it is lifted wet';
  const sentence = `${first}; ${then}.`;
  if (choice.verdict === 'defer')
    return `Ask a conservator before you touch a valued original. For a copy, or for practice: ${lowerFirst(sentence)}`;
  if (choice.verdict === 'unlikely')
    return `Nothing here is likely to work as it stands. The least bad: ${lowerFirst(sentence)}`;
  if (choice.verdict === 'ruled-out')
    return 'Everything here is ruled out for this job. The reasons stand below; take away a need, or add an adhesive.';
  return sentence;
}

/**
 * Chances that lie no further apart are as good as the same. Our own line: binders who were asked the same disagree
 * more (the page on checks shows how often a source accepts the first, and how often one of these).
 */
const NEAR = 0.05;

/** Which of the next two do about as well as the first; none where the first is no advice. Takes them in the order shown. */
export function asGoodAsFirst([best, ...others]: readonly Ranked[]): readonly Ranked[] {
  if (!best || !['sound', 'likely', 'touch-and-go'].includes(best.verdict)) return [];
  return others
    .slice(0, 2)
    .filter((one) => one.verdict === best.verdict && one.atHand === best.atHand && best.chance - one.chance <= NEAR);
}

/** The same in a sentence; empty where there is none. */
export function aboutAsGood(choices: readonly Ranked[], catalogue: Catalogue): string {
  const names = asGoodAsFirst(choices).map(({ adhesiveId }) => catalogue.adhesives.get(adhesiveId)!.short);
  return names.length > 0 ? `About as good here: ${names.join(', or ')}.` : '';
}

/** A margin this far from 1 either way says no more. Our own line. */
const FAR = 20;

/** What is there ÷ what is needed, as it stands beside a chance. */
export function marginSaid(margin: number): string {
  if (margin > FAR) return `margin over ${FAR}`;
  return margin < 1 / FAR ? `margin under ${1 / FAR}` : `margin ${figure(margin)}`;
}

/** Name of an adhesive as a sentence starts with it. */
export const adhesiveName = (id: string, catalogue: Catalogue): string => catalogue.adhesives.get(id)?.name ?? id;
