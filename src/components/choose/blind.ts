/** Where the model, asked about a paper of the bench outcomes that had been left out, was wrong. */
import { getCollection } from 'astro:content';
import type { Blind } from '../../core/choose/blind';

/** A chance on the other side of one half from what happened counts as wrong. */
const wrong = ({ said, happened }: Blind): boolean => said >= 0.5 !== happened;

export async function blindMisses(): Promise<readonly Blind[]> {
  const checks = await getCollection('checks');
  return checks.flatMap(({ data }) => {
    if (data.kind !== 'leave-one-out') return [];
    const about = checks.find(({ id }) => id === data.of)?.data;
    if (about?.kind !== 'outcomes') throw new Error(`${data.of} are no bench outcomes`);
    return data.folds.flatMap(({ rows }) =>
      rows.flatMap(({ id, spread, lift }) => {
        const row = about.rows.find((one) => one.id === id);
        if (!row) throw new Error(`${data.of} has no row ${id}`);
        const { paper, grammage, adhesive } = row;
        const pair = { paper, grammage, adhesive, substrate: about.setting.substrate };
        return [
          { ...pair, thing: 'spread', said: spread, happened: row.spreads } as const,
          { ...pair, thing: 'lift', said: lift, happened: row.lifts } as const,
        ].filter(wrong);
      }),
    );
  });
}
