/** The answer that the sender of a link saw, carried in the link, so that a page can say when today's differs. */
import type { Ranked, Verdict } from './finding';
import { MODEL_VERSION } from '../link/model-version';

export interface Seen {
  readonly modelVersion: number;
  readonly adhesiveId: string;
  readonly verdict: Verdict;
  /** seconds, rounded */
  readonly slipLow: number;
  readonly slipHigh: number;
}

/** What a link carries of the answer that its sender saw. */
export function seenIn(best: Ranked): Seen {
  const { p10, p90 } = best.slipSeconds;
  return {
    modelVersion: MODEL_VERSION,
    adhesiveId: best.adhesiveId,
    verdict: best.verdict,
    slipLow: Math.round(p10),
    slipHigh: Math.round(p90),
  };
}

/** Whether today's answer is the one that was seen, near enough to act on: same first place, same word, slip within a tenth. */
export function sameAnswer(seen: Seen, now: Seen): boolean {
  const near = (a: number, b: number) => Math.abs(a - b) <= 1 + 0.1 * Math.max(a, b);
  return (
    seen.adhesiveId === now.adhesiveId &&
    seen.verdict === now.verdict &&
    near(seen.slipLow, now.slipLow) &&
    near(seen.slipHigh, now.slipHigh)
  );
}

/** The sender's answer as one word of a link; `decodeSeen` reads it. */
export const encodeSeen = (seen: Seen): string =>
  [seen.modelVersion, seen.adhesiveId, seen.verdict, seen.slipLow, seen.slipHigh].join('.');

const VERDICTS: readonly Verdict[] = ['sound', 'likely', 'touch-and-go', 'unlikely', 'ruled-out', 'refused', 'defer'];

/** The answer in this text, or undefined when it is not one. */
export function decodeSeen(text: string | undefined): Seen | undefined {
  const [version, adhesiveId, verdictText, low, high, ...rest] = (text ?? '').split('.');
  const verdict = VERDICTS.find((one) => one === verdictText);
  const whole = (part: string | undefined) => (part !== undefined && /^\d{1,5}$/.test(part) ? Number(part) : undefined);
  const [modelVersion, slipLow, slipHigh] = [whole(version), whole(low), whole(high)];
  if (rest.length > 0 || !adhesiveId || !/^[a-z0-9-]{1,60}$/.test(adhesiveId) || !verdict) return undefined;
  if (modelVersion === undefined || slipLow === undefined || slipHigh === undefined) return undefined;
  return { modelVersion, adhesiveId, verdict, slipLow, slipHigh };
}

/** That an answer has learned from swatches of its sender: how many, and a digest of what they weigh. */
export interface TaughtBy {
  readonly swatches: number;
  readonly digest: string;
}

/** What its sender saw with them: what stood first, second and third, each with its chance in hundredths. */
export interface TaughtAnswer extends TaughtBy {
  readonly firsts: readonly { readonly adhesiveId: string; readonly hundredths: number }[];
}
const MOST_FIRSTS = 3;

/** The same as one word of a link: "8.1f3a9c~pva.72~paste.40"; `decodeTaught` reads it. `choices`: best first. */
export const encodeTaught = (
  { swatches, digest }: TaughtBy,
  choices: readonly Pick<Ranked, 'adhesiveId' | 'chance'>[],
): string =>
  [
    `${swatches}.${digest}`,
    ...choices.slice(0, MOST_FIRSTS).map(({ adhesiveId, chance }) => `${adhesiveId}.${Math.round(100 * chance)}`),
  ].join('~');

/** What such a word says, or undefined when it is none; places that cannot be read are left out. */
export function decodeTaught(text: unknown): TaughtAnswer | undefined {
  const [head = '', ...places] = typeof text === 'string' ? text.slice(0, 300).split('~') : [];
  const [, count, digest] = /^(\d{1,5})\.([0-9a-f]{6})$/.exec(head) ?? [];
  const swatches = Number(count);
  if (digest === undefined || swatches === 0) return undefined;
  const firsts = places.slice(0, MOST_FIRSTS).flatMap((place) => {
    const [, adhesiveId, hundredths] = /^([a-z0-9-]{1,60})\.(\d{1,3})$/.exec(place) ?? [];
    return adhesiveId === undefined || Number(hundredths) > 100 ? [] : [{ adhesiveId, hundredths: Number(hundredths) }];
  });
  return { swatches, digest, firsts };
}
