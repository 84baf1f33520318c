/** Papers down, adhesives across: how each pairing stands, in a word, a pattern and its counts. */
import { paperWithWeight } from '../../core/trial/counts';
import type { Cell } from '../../core/trial/analysis';
import type { Trial } from '../../core/trial/record';
import { percent, standingOf } from '../../core/trial/words';

interface Props {
  readonly trial: Trial;
  readonly cells: readonly Cell[];
  /** what was asked, to tell one table of a page from another */
  readonly question: string;
}

export function HeatTable({ trial, cells, question }: Props) {
  return (
    <>
      {/* outside the table, so that it does not scroll away with it */}
      <p class="field-hint heat-key">
        Clean passes of all judged, and how far the true rate may lie (95 %, each range by itself). “Partly” is no clean
        pass. A pairing stands one way only when that whole range lies on one side of a half.
      </p>
      <section class="scroll-box" tabIndex={0} aria-label={`${question}: papers and adhesives, a wide table`}>
        <table class="numbers heat">
          <thead>
            <tr>
              <th scope="col">Paper</th>
              {trial.glues.map(({ id, name }) => (
                <th scope="col" key={id}>
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {trial.papers.map((paper) => (
              <tr key={paper.id}>
                <th scope="row">{paperWithWeight(paper)}</th>
                {cells
                  .filter((cell) => cell.paper === paper.id)
                  .map((cell) => (
                    <td key={cell.glue} data-standing={standingOf(cell)}>
                      <span class="heat-count">{cell.interval ? `${cell.passes} of ${cell.n}` : '–'}</span>
                      <span class="heat-word">{standingOf(cell)}</span>
                      {cell.interval && (
                        <span class="cell-note">
                          {percent(cell.interval.low)} to {percent(cell.interval.high)}
                          {cell.partly > 0 && `, ${cell.partly} partly`}
                        </span>
                      )}
                    </td>
                  ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}
