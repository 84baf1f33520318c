/** The four home tests of the grain, as observations; and what else the eye can tell. */
import { SIZINGS, SURFACES } from '../../core/paper/asked-paper';
import type { GrainTest } from '../../core/paper/grain-tests';
import type { MeasureField } from '../../core/measure/plan';
import { PickOf } from '../parts/PlanField';
import type { MeasureFieldsProps } from './MeasureFields';

/** What the eye sees in each test, for a grain that runs up and down, and from side to side. */
const TESTS: Readonly<Record<GrainTest, readonly [up: string, side: string]>> = {
  bend: ['the upright bend is easier', 'the level bend is easier'],
  strips: ['the upright strip stands out', 'the level strip stands out'],
  damp: ['it rolls to an upright tube', 'it rolls to a level tube'],
  tear: ['the tear down is straighter', 'the tear across is straighter'],
};
const NONE = [
  { value: 'untried', text: 'not tried' },
  { value: 'unclear', text: 'tried, no difference' },
];
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1).replaceAll('-', ' ');
const asKind = (words: readonly string[]) => [
  { value: 'kind', text: 'As its kind' },
  ...words.map((value) => ({ value, text: capital(value) })),
];

export function GrainFields(props: MeasureFieldsProps) {
  return (
    <>
      <fieldset class="choice-set">
        <legend>Which way the grain runs</legend>
        <p class="field-hint">Hold the sheet before you, draw an arrow up on it, and keep it so for every test.</p>
        <PickOf<MeasureField>
          {...props}
          field="shape"
          options={[
            { value: 'taller', text: 'taller than wide' },
            { value: 'wider', text: 'wider than tall' },
            { value: 'square', text: 'square, or an offcut' },
          ]}
        />
        {(Object.keys(TESTS) as GrainTest[]).map((test) => {
          const [up, side] = TESTS[test];
          const options = [NONE[0]!, { value: 'height', text: up }, { value: 'width', text: side }, NONE[1]!];
          return <PickOf<MeasureField> key={test} {...props} field={test} options={options} />;
        })}
      </fieldset>
      <details>
        <summary>What the eye can tell</summary>
        <PickOf<MeasureField> {...props} field="surface" options={asKind(SURFACES)} />
        <PickOf<MeasureField> {...props} field="sizing" options={asKind(SIZINGS)} />
        <PickOf<MeasureField>
          {...props}
          field="colours"
          options={[
            { value: 'kind', text: 'As its kind' },
            { value: 'yes', text: 'Yes, they run' },
            { value: 'no', text: 'No, they are fast' },
          ]}
        />
      </details>
    </>
  );
}
