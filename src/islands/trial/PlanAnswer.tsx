/** What a plan takes and what it can show. */
import { useEffect, useState } from 'preact/hooks';
import { span } from '../../core/base/format';
import type { Range } from '../../core/base/quantity';
import { amountsNeeded } from '../../core/trial/amounts';
import { claimCount, swatchCount } from '../../core/trial/design';
import type { Planned } from '../../core/trial/plan';
import { detectableDifference } from '../../core/stats/power';
import { percent, powerWords } from '../../core/trial/words';
import { powerLater, powerNow, shapeOf } from '../../stores/trial/plan-power';

/** Minutes as people say them. */
function timeSpan({ low, high }: { low: number; high: number }): string {
  if (high < 100) return span(low, high, 'min');
  return span(low / 60, high / 60, 'h');
}

const NO_COAT: Range = { low: 0, middle: 0, high: 0, basis: 'estimate' };

/** "24 swatches, 40 to 90 min": for the strip and for those who listen. */
export function planLine(plan: Planned): string {
  const { minutes } = amountsNeeded(plan, plan.widthMm, plan.heightMm, NO_COAT);
  return `${swatchCount(plan)} swatches, ${timeSpan(minutes)}`;
}

const counted = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`;

/** "2 papers × 2 adhesives × 1 hold time × 3 of each": the design, and the line of its folded form. */
export const designLine = ({ papers, glues, holds, replicates }: Planned): string =>
  `${counted(papers.length, 'paper')} × ${counted(glues.length, 'adhesive')} × ${counted(holds.length, 'hold time')} × ${replicates} of each`;

export function PlanAnswer({ plan, coat }: { readonly plan: Planned; readonly coat: Range }) {
  const { swatches, minutes, perPaper, board, gluePerAdhesive } = amountsNeeded(
    plan,
    plan.widthMm,
    plan.heightMm,
    coat,
  );
  const { replicates } = plan;
  const sheets = (count: number | undefined) =>
    count === undefined
      ? 'each larger than a sheet of A4'
      : `from ${count} ${count === 1 ? 'sheet' : 'sheets'} of A4, grain all one way`;
  return (
    <>
      <h2>{swatches} swatches</h2>
      <p>{designLine(plan)}.</p>
      <Power plan={plan} />
      <table class="numbers">
        <caption>What you need. The time is at the bench, without drying; it is an estimate.</caption>
        <tbody>
          <tr>
            <th scope="row">Time</th>
            <td>{timeSpan(minutes)}</td>
          </tr>
          <tr>
            <th scope="row">Of each paper</th>
            <td>
              {perPaper.pieces} pieces of {plan.widthMm} × {plan.heightMm}
              {'\u00a0'}mm, {sheets(perPaper.sheets)}
            </td>
          </tr>
          <tr>
            <th scope="row">Board</th>
            <td>
              {board.pieces} pieces of {board.widthMm} × {board.heightMm}
              {'\u00a0'}mm, {sheets(board.sheets)}
            </td>
          </tr>
          <tr>
            <th scope="row">Of each adhesive</th>
            <td>{span(gluePerAdhesive.low, gluePerAdhesive.high, 'g')} wet, half of it again left in the brush</td>
          </tr>
        </tbody>
      </table>
      <details>
        <summary>What more of each would show</summary>
        <table class="numbers">
          <caption>
            Two adhesives on one paper and one question, without “partly”: called different at most 1 time in 20 when
            they are not, noticed 4 times in 5 when they are. Counted through every outcome.
          </caption>
          <thead>
            <tr>
              <th scope="col" class="n">
                Of each
              </th>
              <th scope="col">Noticed</th>
              <th scope="col" class="n">
                True rates apart by
              </th>
            </tr>
          </thead>
          <tbody>
            {[2, 3, 4, 5, 6, 8, 10, 12].map((n) => {
              const { difference, noticed } = detectableDifference(n);
              return (
                <tr key={n} class={n === replicates ? 'is-mine' : undefined}>
                  <th scope="row" class="n">
                    {n}
                    {n === replicates && <span class="cell-note">yours</span>}
                  </th>
                  <td>{noticed[0] === undefined ? 'nothing' : `${noticed[0]} of ${n} against none`}</td>
                  <td class="n">{difference === undefined ? 'none' : percent(difference)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
        <p>
          Several papers in one trial are weighed together, so three of each on four papers show more than three of each
          on one. Several adhesives and questions share one page, and the more it compares, the clearer a difference
          must be before the page says so.
        </p>
      </details>
    </>
  );
}

/** What the plan can tell apart. The first is there with the page; a change is worked out in turns. */
function Power({ plan }: { readonly plan: Planned }) {
  const shape = shapeOf(plan);
  const key = JSON.stringify(shape);
  const [found, setFound] = useState(() => ({ key, power: powerNow(shape) }));
  useEffect(() => (found.key === key ? undefined : powerLater(shape, (power) => setFound({ key, power }))), [key]);
  if (claimCount(plan) === 0)
    return (
      <p class="plan-power">One adhesive and fewer than three weights: nothing is compared, each is only counted.</p>
    );
  return (
    <p class="plan-power" aria-busy={found.key !== key}>
      {found.key === key ? powerWords(found.power) : 'Still working out what such a trial can tell apart.'}
    </p>
  );
}
