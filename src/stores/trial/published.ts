/** Published trials that a reader has asked to be counted: they are kept on the shelf under an id of their own. */
import { PUBLISHED } from '../../core/learn/condition';
import { parseTrial } from '../../core/trial/parse';
import type { Trial } from '../../core/trial/record';
import type { TrialShelf } from './shelf';

const idOnShelf = (id: string): string => `${PUBLISHED}-${id}`;

/** Whether this published trial is among those kept on the device. */
export const isCounted = (trials: readonly Trial[], id: string): boolean =>
  trials.some((trial) => trial.id === idOnShelf(id));

/** Fetches a published trial and keeps it. Gives what went wrong in words, or undefined when nothing did. */
export async function countAlso(
  shelf: TrialShelf,
  id: string,
  address: string,
  get: (address: string) => Promise<unknown> = async (from) => (await fetch(from)).json(),
): Promise<string | undefined> {
  let value: unknown;
  try {
    value = await get(address);
  } catch {
    return 'The file could not be fetched. Are you without a network? Nothing was changed.';
  }
  const inside = typeof value === 'object' && value !== null && 'trials' in value ? value.trials : undefined;
  const found = parseTrial(Array.isArray(inside) ? inside[0] : undefined);
  if (!found.ok || found.trial.demo) return 'This file is no trial that can be counted. Nothing was changed.';
  return shelf.put({ ...found.trial, id: idOnShelf(id) })
    ? undefined
    : 'This browser did not keep the trial: it counts only while this page is open.';
}

/** Takes it off the device again. */
export const leaveOut = (shelf: TrialShelf, id: string): void => shelf.remove(idOnShelf(id));
