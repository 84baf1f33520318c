/** What somebody wants to know: what of it can be asked, and what is said of the rest. */
import { describe, expect, it } from 'vitest';
import { JOB_FIELDS } from '../../../src/core/choose/job';
import { askingOf, createNextSwatches } from '../../../src/stores/trial/next-swatches';
import { planTextOf } from '../../../src/core/trial/plan-link';
import { FIRST_WISH, PLACE_SECONDS, wantedOf, wishOf } from '../../../src/stores/trial/wish';

describe('a wish', () => {
  it('can be asked as it stands there at first', () => {
    const { wanted, problems } = wantedOf(FIRST_WISH);
    expect(problems).toEqual([]);
    expect(askingOf(wanted!)).toMatchObject({
      job: { paper: { family: 'marbled' }, placeSeconds: 60, tool: 'brush-full' },
      holds: [20, 60],
    });
  });
  it('says beside its field what cannot be', () => {
    const { wanted, problems } = wantedOf({ ...FIRST_WISH, grammage: 'light', seconds: '0', among: ['pva'] });
    expect(wanted).toBeUndefined();
    expect(problems.map(({ field }) => field)).toEqual(['grammage', 'seconds', 'among']);
  });
  it('takes what a link to a plan asks about', () => {
    const names = { paper: String, adhesive: String, substrate: String, tool: String };
    const of = (tail: string) => wishOf(planTextOf(tail, names)!, FIRST_WISH);
    expect(of('paper=kozo-medium~40gsm&glue=eva.pva&on=mount-board&hold=35&tool=roller')).toEqual({
      ...FIRST_WISH,
      family: 'kozo-medium',
      grammage: '40',
      among: ['eva', 'pva'],
      substrate: 'mount-board',
      tool: 'roller',
      seconds: '35',
    });
    expect(of('paper=kozo-medium&glue=eva').among).toEqual(['eva', ...FIRST_WISH.among]);
  });
  it('has the seconds that a job may have', () => {
    const { low, high, unit } = JOB_FIELDS.placeSeconds;
    expect(PLACE_SECONDS).toEqual({ low, high, unit });
  });
  it('is answered, also on a bench that was measured', async () => {
    const store = createNextSwatches(() => []);
    const answered = async (bench: string) => {
      store.$told.set(undefined);
      store.ask(askingOf(wantedOf({ ...FIRST_WISH, bench }).wanted!));
      await expect.poll(() => store.$told.get(), { timeout: 60_000 }).toBeDefined();
      return store.$told.get()!;
    };
    const usual = await answered('');
    const measured = await answered('brush-full_coat_100_104_108~binders-board_drinks_3.2_3.5_3.8');
    expect(usual.says.length).toBe(usual.next.swatches.length);
    expect(measured.next.wrong).not.toBe(usual.next.wrong);
  });
});
