/** Three swatches: say what each showed, and see what that makes of papers that nobody has swatched. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { POOL } from '../../core/learn/versions';
import { inTurns } from '../../stores/shared/time-slice';
import {
  FIRST_SHOWN,
  fromThreeInTurns,
  OUTCOMES_SHOWN,
  SHOWN_WORDS,
  THREE,
  type FromThree,
  type Shown,
} from '../../stores/trial/three-swatches';
import { SelectField } from '../parts/Field';

interface Props {
  /** worked out at build for what the swatches show at first */
  readonly start: FromThree;
}

const OPTIONS = OUTCOMES_SHOWN.map((value) => ({ value, text: SHOWN_WORDS[value] }));
const percent = (share: number) => `${Math.round(share * 100)}\u00a0%`;

export default function ThreeSwatches({ start }: Props) {
  const [shown, setShown] = useState(FIRST_SHOWN);
  const [found, setFound] = useState(start);
  const first = useRef(true);
  useEffect(() => {
    if (first.current) {
      first.current = false;
      return;
    }
    return inTurns(fromThreeInTurns(shown), setFound);
  }, [shown]);
  return (
    <div class="bench">
      <div class="bench-inputs" role="group" aria-label="What three swatches showed">
        {THREE.map(({ says }, i) => (
          <SelectField
            key={says}
            id={`three-${i}`}
            label={`Swatch ${i + 1}: ${says}`}
            options={OPTIONS}
            value={shown[i]!}
            onPick={(value) => setShown(shown.map((one, k) => (k === i ? (value as Shown) : one)))}
          />
        ))}
      </div>
      <section class="bench-answer" aria-label="What the model makes of other papers" aria-live="polite">
        <table class="numbers">
          <caption>Chance of a clean lift after 60&nbsp;s, on papers that were not swatched</caption>
          <thead>
            <tr>
              <th scope="col">Paper and glue</th>
              <th scope="col">Model alone</th>
              <th scope="col">With the three</th>
            </tr>
          </thead>
          <tbody>
            {found.rows.map(({ says, before, now }) => (
              <tr key={says}>
                <th scope="row">{says}</th>
                <td>{percent(before)}</td>
                <td>{percent(now)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p>
          Of {POOL} versions of the bench, about {Math.round(found.effective)} still have a say.
        </p>
      </section>
    </div>
  );
}
