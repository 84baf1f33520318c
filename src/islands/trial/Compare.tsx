/** Two adhesives on the same papers. */
import { useState } from 'preact/hooks';
import { figure } from '../../core/base/format';
import { nameIn, type Trial } from '../../core/trial/record';
import type { Compared } from '../../core/trial/summary';
import { comparisonWords, resultWords, turnedRound } from '../../core/trial/words';
import { SelectField } from '../parts/Field';

interface Props {
  readonly trial: Trial;
  readonly question: string;
  readonly compared: readonly Compared[];
  /** all claims of the page */
  readonly claims: number;
  readonly level: number;
}

export function CompareGlues({ trial, question, compared, claims, level }: Props) {
  const [first, setFirst] = useState(trial.glues[0]?.id ?? '');
  const [second, setSecond] = useState(trial.glues[1]?.id ?? '');
  const options = trial.glues.map(({ id, name }) => ({ value: id, text: name }));
  const between = (a: string, b: string) =>
    compared.find(({ comparison }) => comparison.first.glue === a && comparison.second.glue === b);
  const found = between(first, second) ?? between(second, first);
  return (
    <details>
      <summary>Two adhesives side by side</summary>
      <div class="field-row">
        <SelectField id={`${question}-first`} label="One" value={first} options={options} onPick={setFirst} />
        <SelectField id={`${question}-second`} label="The other" value={second} options={options} onPick={setSecond} />
      </div>
      {!found && (
        <p>
          {first === second
            ? 'Choose two different adhesives.'
            : 'No paper has been judged with both by one person in one trial yet.'}
        </p>
      )}
      {found && <Found trial={trial} found={found} first={first} second={second} claims={claims} level={level} />}
    </details>
  );
}

interface FoundProps extends Pick<Props, 'trial' | 'claims' | 'level'> {
  readonly found: Compared;
  readonly first: string;
  readonly second: string;
}

function Found({ trial, found, first, second, claims, level }: FoundProps) {
  const { adjusted } = found;
  const comparison = found.comparison.first.glue === first ? found.comparison : turnedRound(found.comparison);
  const [one, other] = [nameIn(trial.glues, first), nameIn(trial.glues, second)];
  return (
    <>
      <p>{resultWords(comparison, one, other, { adjusted, level })}</p>
      <p>{comparisonWords(comparison, one, other, { adjusted, claims, level })}</p>
      <details>
        <summary>By which test, and its figures</summary>
        <TestTable comparison={comparison} adjusted={adjusted} claims={claims} />
      </details>
    </>
  );
}

function TestTable({
  comparison: { difference, p, test, blocks, pairs },
  adjusted,
  claims,
}: Pick<Compared, 'comparison' | 'adjusted'> & { readonly claims: number }) {
  return (
    <table class="numbers">
      <caption>
        “Partly” counts as half a pass in the mean. Only swatches of one person, trial, tool, paper and hold are set
        against each other.
      </caption>
      <tbody>
        <tr>
          <th scope="row">Mean score, one less the other</th>
          <td class="n">{figure(Math.abs(difference) < 1e-9 ? 0 : difference).replace('-', '−')}</td>
        </tr>
        <tr>
          <th scope="row">
            Luck alone gives such a gap
            <span class="cell-note">
              {test === 'boschloo'
                ? 'Boschloo’s exact test, two-sided'
                : `exact stratified permutation test in ${blocks} ${blocks === 1 ? 'place' : 'places'} (person × trial × tool × paper × hold), two-sided`}
            </span>
          </th>
          <td class="n">p = {figure(p)}</td>
        </tr>
        <tr>
          <th scope="row">
            The same, somewhere on this page
            <span class="cell-note">
              {claims} {claims === 1 ? 'comparison' : 'comparisons'} (Holm’s procedure, with Tarone’s allowance)
            </span>
          </th>
          <td class="n">p = {figure(adjusted)}</td>
        </tr>
        {pairs.all > 0 && (
          <tr>
            <th scope="row">
              In pairs of the same place and repeat, only one passed
              <span class="cell-note">one, then the other</span>
            </th>
            <td class="n">
              {pairs.onlyFirst} to {pairs.onlySecond}
            </td>
          </tr>
        )}
      </tbody>
    </table>
  );
}
