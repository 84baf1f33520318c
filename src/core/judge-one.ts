/** One adhesive judged by the chooser's model, without the rest of the shelf: quick enough for every key that is pressed. */
import type { Job } from './job';
import { rank, type Ranked } from './ranking';
import type { Adhesive, Catalogue } from './records';

/** The choices for these adhesives alone, by id. Throws RangeError on an id that the catalogue does not know. */
export function judge(ids: readonly string[], job: Job, catalogue: Catalogue): ReadonlyMap<string, Ranked> {
  for (const id of ids) if (!catalogue.adhesives.has(id)) throw new RangeError(`no adhesive called ${id}`);
  const adhesives = withTheirParts(ids, catalogue.adhesives);
  const choices = rank({ ...job, atHand: [] }, { ...catalogue, adhesives });
  return new Map(
    choices.filter(({ adhesiveId }) => ids.includes(adhesiveId)).map((choice) => [choice.adhesiveId, choice]),
  );
}

/** A mix on the shelf may itself be made of mixes, which must be there to be looked up. */
function withTheirParts(ids: readonly string[], all: Catalogue['adhesives']): Catalogue['adhesives'] {
  const kept = new Map<string, Adhesive>();
  const keep = (adhesive: Adhesive | undefined): void => {
    if (!adhesive || kept.has(adhesive.id)) return;
    kept.set(adhesive.id, adhesive);
    if (adhesive.form === 'wet') for (const { of } of adhesive.parts) keep(all.get(of));
  };
  for (const id of ids) keep(all.get(id));
  return kept;
}
