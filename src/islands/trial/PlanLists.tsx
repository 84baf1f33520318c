/** The papers and the adhesives of a plan: lists that grow and shrink. */
import { useStore } from '@nanostores/preact';
import { asPaperText, NO_GLUE, NO_PAPER, type PaperText } from '../../core/trial/plan-text';
import { TRIAL_LIMITS } from '../../core/trial/record';
import type { TrialPlanStore } from '../../stores/trial/plan';
import { NumberField, SelectField, type Option } from '../parts/Field';
import { GrowingRows } from '../parts/GrowingRows';
import { changed, without } from '../parts/rows';
import { TakeOwnPaper } from '../parts/TakeOwnPaper';
import { TextField } from '../parts/TextField';

export function useProblem(store: TrialPlanStore): (field: string) => string | undefined {
  const problems = useStore(store.$problems);
  return (field) => problems.find((problem) => problem.field === field)?.message;
}

export function PaperRows({
  store,
  families,
}: {
  readonly store: TrialPlanStore;
  readonly families: readonly Option[];
}) {
  const { papers } = useStore(store.$text);
  const error = useProblem(store);
  const set = (place: number, part: Partial<PaperText>) => store.set('papers', changed(papers, place, part));
  return (
    <section aria-label="Papers">
      <h2 id="plan-papers" tabIndex={-1}>
        Papers
      </h2>
      <GrowingRows
        count={papers.length}
        most={TRIAL_LIMITS.papers}
        id="plan-paper-"
        name="Paper"
        takeWords="Remove paper"
        addWords="Add a paper"
        full={`A trial takes at most ${TRIAL_LIMITS.papers} papers.`}
        frame="plan-item"
        onTake={(i) => store.set('papers', without(papers, i))}
        onAdd={() => store.set('papers', [...papers, { ...NO_PAPER, name: `Paper ${papers.length + 1}` }])}
      >
        {(i, take) => (
          <>
            <TakeOwnPaper id={`plan-paper-${i}-own`} onTake={(own) => set(i, asPaperText(own))} />
            <TextField
              id={`plan-paper-${i}-name`}
              label="What you call it"
              most={TRIAL_LIMITS.name}
              value={papers[i]!.name}
              error={error(`paper-${i}-name`)}
              onText={(name) => set(i, { name })}
            />
            <div class="field-row">
              <NumberField
                id={`plan-paper-${i}-grammage`}
                label="Weight"
                unit="g/m²"
                value={papers[i]!.grammage}
                error={error(`paper-${i}-grammage`)}
                onText={(grammage) => set(i, { grammage })}
              />
              <NumberField
                id={`plan-paper-${i}-drop`}
                label="A drop sinks in after"
                unit="s"
                value={papers[i]!.dropSeconds}
                placeholder="if you timed it"
                error={error(`paper-${i}-drop`)}
                onText={(dropSeconds) => set(i, { dropSeconds })}
              />
            </div>
            <SelectField
              id={`plan-paper-${i}-family`}
              label="Most like"
              hint={i === 0 ? 'So that the trial can speak to the chooser.' : undefined}
              value={papers[i]!.family}
              options={[{ value: '', text: 'None of the shelf' }, ...families]}
              onPick={(family) => set(i, { family })}
            />
            {take}
          </>
        )}
      </GrowingRows>
    </section>
  );
}

export function GlueRows({
  store,
  adhesives,
}: {
  readonly store: TrialPlanStore;
  readonly adhesives: readonly Option[];
}) {
  const { glues } = useStore(store.$text);
  const error = useProblem(store);
  return (
    <section aria-label="Adhesives">
      <h2 id="plan-glues" tabIndex={-1}>
        Adhesives
      </h2>
      <GrowingRows
        count={glues.length}
        most={TRIAL_LIMITS.glues}
        id="plan-glue-"
        name="Adhesive"
        takeWords="Remove adhesive"
        addWords="Add an adhesive"
        full={`A trial takes at most ${TRIAL_LIMITS.glues} adhesives.`}
        frame="plan-item"
        onTake={(i) => store.set('glues', without(glues, i))}
        onAdd={() => store.set('glues', [...glues, { ...NO_GLUE, name: `Adhesive ${glues.length + 1}` }])}
      >
        {(i, take) => (
          <>
            <SelectField
              id={`plan-glue-${i}-record`}
              label="On the shelf it is"
              value={glues[i]!.record}
              options={[{ value: '', text: 'None of these' }, ...adhesives]}
              onPick={(record) => store.pickGlue(i, record)}
            />
            <TextField
              id={`plan-glue-${i}-name`}
              label="What you call it"
              most={TRIAL_LIMITS.name}
              value={glues[i]!.name}
              error={error(`glue-${i}-name`)}
              onText={(name) => store.nameGlue(i, name)}
            />
            {take}
          </>
        )}
      </GrowingRows>
    </section>
  );
}
