/**
 * Trials planned before the end of November 2026 may bear the wrong name: when another adhesive was picked from the
 * shelf, the planner kept the name of its default row. Only whoever glued can say which it was.
 */
import type { Trial, TrialGlue } from '../../core/trial/record';
import type { TrialShelf } from '../../stores/trial/shelf';
import type { Option } from '../parts/Field';

interface Props {
  readonly trial: Trial;
  /** the adhesives of the shelf */
  readonly adhesives: readonly Option[];
  /** where the trial is kept; without it the doubt is said and cannot be settled here */
  readonly shelf?: TrialShelf;
}

export function NameDoubt({ trial, adhesives, shelf }: Props) {
  const doubtful = trial.glues.filter((glue) => glue.doubtful);
  const settle = (id: string, step: (glue: TrialGlue) => TrialGlue) =>
    void shelf?.change(trial.id, (now) => ({
      ...now,
      glues: now.glues.map((glue) => (glue.id === id ? step(glue) : glue)),
    }));
  return (
    <>
      {doubtful.map(({ id, name, record }) => {
        const title = adhesives.find(({ value }) => value === record)?.text ?? record;
        return (
          <div class="problem-list" role="status" key={id}>
            <p>
              The name “{name}” may not match what was glued. When this trial was planned, “{title}” was picked from the
              shelf, but a fault of this page kept the old name. Only you can know which of the two it was. Until you
              say so, these swatches count nowhere but in this trial.
            </p>
            {shelf && (
              <div class="button-row">
                <button
                  type="button"
                  class="button-quiet"
                  onClick={() => settle(id, ({ doubtful: _, ...glue }) => ({ ...glue, name: title ?? name }))}
                >
                  It was {title}
                </button>
                <button
                  type="button"
                  class="button-quiet"
                  onClick={() => settle(id, ({ doubtful: _, record: __, ...glue }) => glue)}
                >
                  It was {name}
                </button>
              </div>
            )}
          </div>
        );
      })}
    </>
  );
}
