/** The planner's state: the plan as typed, kept as a draft on this device, and what it makes. */
import { atom, computed, type ReadableAtom } from 'nanostores';
import { planOf, trialOf, type Planned } from '../../core/trial/plan';
import { draftOf, type PlanText } from '../../core/trial/plan-text';
import type { InputError } from '../../core/base/result';
import type { Trial } from '../../core/trial/record';

const DRAFT_KEY = 'open-time:plan';

export interface PlanStore {
  readonly $text: ReadableAtom<PlanText>;
  readonly $problems: ReadableAtom<readonly InputError[]>;
  /** the last plan that made sense */
  readonly $plan: ReadableAtom<Planned>;
  readonly set: <K extends keyof PlanText>(field: K, value: PlanText[K]) => void;
  /** reads the draft that this device holds */
  readonly wake: (storage: Storage | undefined, seed: number) => void;
  readonly draw: (id: string, createdAt: string) => Trial | undefined;
  readonly forget: () => void;
}

export function createPlan(start: PlanText): PlanStore {
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
  return {
    $text,
    $problems: computed($made, ({ problems }) => problems),
    $plan,
    set: (field, value) => {
      $text.set({ ...$text.get(), [field]: value });
      keep();
    },
    wake: (given, seed) => {
      storage = given;
      $seed.set(seed);
      try {
        const stored = storage?.getItem(DRAFT_KEY);
        if (stored) $text.set(draftOf(JSON.parse(stored)));
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
