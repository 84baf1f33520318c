/** The answer in a word and a sentence. */
import type { Ranked, Verdict } from './ranking';
import { durationSpan } from './format';
import type { Catalogue } from './records';

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
  const time = p10 >= 3600 ? 'an hour or more' : `about ${durationSpan(p10, p90)}`;
  const then = placeBeforeContact
    ? `place it before it touches, for it grabs in ${time}`
    : `you have ${time} to move it`;
  const sentence = `${first}; ${then}.`;
  if (choice.verdict === 'defer')
    return `Ask a conservator before you touch a valued original. For a copy, or for practice: ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;
  if (choice.verdict === 'unlikely')
    return `Nothing here is likely to work as it stands. The least bad: ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;
  if (choice.verdict === 'ruled-out')
    return 'Everything here is ruled out by what you need. Take away a need, or read why below.';
  return sentence;
}

/** Name of an adhesive as a sentence starts with it. */
export const adhesiveName = (id: string, catalogue: Catalogue): string => catalogue.adhesives.get(id)?.name ?? id;
