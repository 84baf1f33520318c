/** The planner's state: the plan as typed, kept as a draft on this device, and what it makes. */
import { atom, computed, type ReadableAtom } from 'nanostores';
import { planOf, trialOf, type Planned } from '../../core/trial/plan';
import { draftOf, type GlueText, type PlanText } from '../../core/trial/plan-text';
import type { InputError } from '../../core/base/result';
import type { Trial } from '../../core/trial/record';

const DRAFT_KEY = 'open-time:plan';

export interface TrialPlanStore {
  readonly $text: ReadableAtom<PlanText>;
  readonly $problems: ReadableAtom<readonly InputError[]>;
  /** the last plan that made sense */
  readonly $plan: ReadableAtom<Planned>;
  readonly set: <K extends keyof PlanText>(field: K, value: PlanText[K]) => void;
  /** what an adhesive is on the shelf, '' for nothing there; its name follows unless one was typed */
  readonly pickGlue: (place: number, record: string) => void;
  /** what an adhesive is called; an empty name follows the shelf again */
  readonly nameGlue: (place: number, name: string) => void;
  /** takes the plan that a link brought, or else reads the draft that this device holds */
  readonly wake: (storage: Storage | undefined, seed: number, sent?: PlanText) => void;
  readonly draw: (id: string, createdAt: string) => Trial | undefined;
  readonly forget: () => void;
}

/** `nameOf`: what the shelf calls a record, '' for none. */
export function createTrialPlan(start: PlanText, nameOf: (record: string) => string): TrialPlanStore {
  const $text = atom<PlanText>(start);
  const $seed = atom(1);
  const $made = computed([$text, $seed], planOf);
  const first = $made.get().plan;
  if (!first) throw new Error('the plan to start from must be sound');
  const $plan = atom<Planned>(first);
  $made.listen(({ plan }) => plan && $plan.set(plan));
  let storage: Storage | undefined;
  const keep = (): void => {
    try {
      storage?.setItem(DRAFT_KEY, JSON.stringify($text.get()));
    } catch {
      // A draft that cannot be kept is still on the screen.
    }
  };
  const set: TrialPlanStore['set'] = (field, value) => {
    $text.set({ ...$text.get(), [field]: value });
    keep();
  };
  const setGlue = (place: number, part: Partial<GlueText>) =>
    set(
      'glues',
      $text.get().glues.map((glue, i) => (i === place ? { ...glue, ...part } : glue)),
    );
  /** A name that nobody typed is that of the shelf, also in a draft of the time when it was not. */
  const following = (glue: GlueText): GlueText =>
    glue.named === '' && nameOf(glue.record) !== '' ? { ...glue, name: nameOf(glue.record) } : glue;
  return {
    $text,
    $problems: computed($made, ({ problems }) => problems),
    $plan,
    set,
    pickGlue: (place, record) => {
      const { name, named, record: before } = $text.get().glues[place]!;
      const typed = named !== '' && name !== '' && name !== nameOf(before);
      setGlue(place, typed ? { record } : following({ name, record, named: '' }));
    },
    nameGlue: (place, name) => setGlue(place, { name, named: name.trim() === '' ? '' : 'yes' }),
    wake: (given, seed, sent) => {
      storage = given;
      $seed.set(seed);
      // A draft stays as it is until something is typed here.
      if (sent) return $text.set(sent);
      try {
        const stored = storage?.getItem(DRAFT_KEY);
        if (!stored) return;
        const draft = draftOf(JSON.parse(stored));
        $text.set({ ...draft, glues: draft.glues.map(following) });
      } catch {
        // An unreadable draft is no draft.
      }
    },
    draw: (id, createdAt) => {
      const { plan } = $made.get();
      return plan && trialOf(plan, id, createdAt);
    },
    forget: () => {
      try {
        storage?.removeItem(DRAFT_KEY);
      } catch {
        // Nothing to forget where nothing can be kept.
      }
    },
  };
}
