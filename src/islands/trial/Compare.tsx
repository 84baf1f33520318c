/** Two adhesives on the same papers. */
import { useState } from 'preact/hooks';
import { figure } from '../../core/base/format';
import { compareGlues } from '../../core/trial/analysis';
import { nameIn, type Trial } from '../../core/trial/record';
import { comparisonWords } from '../../core/trial/words';
import { SelectField } from '../parts/Field';

export function Compare({ trial, question }: { readonly trial: Trial; readonly question: string }) {
  const [first, setFirst] = useState(trial.glues[0]?.id ?? '');
  const [second, setSecond] = useState(trial.glues[1]?.id ?? '');
  const options = trial.glues.map(({ id, name }) => ({ value: id, text: name }));
  const found = first === second ? undefined : compareGlues(trial, question, first, second);
  return (
    <details>
      <summary>Two adhesives side by side</summary>
      <div class="field-row">
        <SelectField id={`${question}-first`} label="One" value={first} options={options} onPick={setFirst} />
        <SelectField id={`${question}-second`} label="The other" value={second} options={options} onPick={setSecond} />
      </div>
      {!found && (
        <p>{first === second ? 'Choose two different adhesives.' : 'No paper has been judged with both yet.'}</p>
      )}
      {found && (
        <>
          <p>{comparisonWords(found, nameIn(trial.glues, first), nameIn(trial.glues, second))}</p>
          <table class="numbers">
            <caption>“Partly” counts as half a pass in the mean.</caption>
            <tbody>
              <tr>
                <th scope="row">Mean score, one less the other</th>
                <td class="n">{figure(Math.abs(found.difference) < 1e-9 ? 0 : found.difference).replace('-', '−')}</td>
              </tr>
              <tr>
                <th scope="row">
                  Luck alone gives such a gap
                  <span class="cell-note">
                    {found.test === 'boschloo'
                      ? 'Boschloo’s exact test, two-sided'
                      : `exact permutation within ${found.blocks} ${found.blocks === 1 ? 'paper' : 'papers and holds'}, two-sided`}
                  </span>
                </th>
                <td class="n">p = {figure(found.p)}</td>
              </tr>
              {found.pairs.all > 0 && (
                <tr>
                  <th scope="row">
                    In pairs of the same paper and repeat
                    <span class="cell-note">McNemar’s exact test; pairs that agree say nothing</span>
                  </th>
                  <td class="n">
                    {found.pairs.onlyFirst} to {found.pairs.onlySecond}, p = {figure(found.pairs.p)}
                  </td>
                </tr>
              )}
            </tbody>
          </table>
        </>
      )}
    </details>
  );
}
