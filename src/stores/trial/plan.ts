/** The planner's state: the plan as typed, kept as a draft on this device, and what it makes. */
import { atom, computed, type ReadableAtom } from 'nanostores';
import { planOf, trialOf, type Planned } from '../../core/trial/plan';
import { draftOf, type GlueText, type PlanText } from '../../core/trial/plan-text';
import type { InputError } from '../../core/base/result';
import type { Trial } from '../../core/trial/record';

/** On the device the draft; for as long as the tab is open what was made of a link's plan. */
const DRAFT_KEY = 'open-time:plan';

/** The plan that a link asks for, with the link as it stands in the address. */
export interface SentPlan {
  readonly link: string;
  readonly text: PlanText;
}

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
  /**
   * Takes the plan that a link brought, or else reads the draft that this device holds. Whoever goes back to a link
   * (`isReturn`, and after a reload) after something was typed over its plan, finds it as they left it: `session` keeps it
   * as long as the tab is open. Whoever opens the link anew sees what it says.
   */
  readonly wake: (
    storage: Storage | undefined,
    seed: number,
    sent?: SentPlan & { readonly isReturn: boolean },
    session?: Storage,
  ) => void;
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
  let session: Storage | undefined;
  let link: string | undefined;
  const keep = (): void => {
    const text = $text.get();
    try {
      storage?.setItem(DRAFT_KEY, JSON.stringify(text));
      if (link !== undefined) session?.setItem(DRAFT_KEY, JSON.stringify({ link, text } satisfies SentPlan));
    } catch {
      // A draft that cannot be kept is still on the screen.
    }
  };
  /** What was last made of the plan of this link. */
  const leftOf = (sent: SentPlan): PlanText | undefined => {
    try {
      const left = JSON.parse(session?.getItem(DRAFT_KEY) ?? 'null') as Partial<SentPlan> | null;
      return left?.link === sent.link ? following(draftOf(left.text)) : undefined;
    } catch {
      return undefined;
    }
  };
  const forgetLeft = (): void => {
    try {
      session?.removeItem(DRAFT_KEY);
    } catch {
      // Nothing to forget where nothing can be kept.
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
  const followingGlue = (glue: GlueText): GlueText =>
    glue.named === '' && nameOf(glue.record) !== '' ? { ...glue, name: nameOf(glue.record) } : glue;
  const following = (draft: PlanText): PlanText => ({ ...draft, glues: draft.glues.map(followingGlue) });
  return {
    $text,
    $problems: computed($made, ({ problems }) => problems),
    $plan,
    set,
    pickGlue: (place, record) => {
      const { name, named, record: before } = $text.get().glues[place]!;
      const typed = named !== '' && name !== '' && name !== nameOf(before);
      setGlue(place, typed ? { record } : followingGlue({ name, record, named: '' }));
    },
    nameGlue: (place, name) => setGlue(place, { name, named: name.trim() === '' ? '' : 'yes' }),
    wake: (given, seed, sent, ofTab) => {
      storage = given;
      session = ofTab;
      link = sent?.link;
      $seed.set(seed);
      // A draft stays as it is until something is typed here.
      if (sent) {
        if (!sent.isReturn) forgetLeft();
        return $text.set(leftOf(sent) ?? sent.text);
      }
      try {
        const stored = storage?.getItem(DRAFT_KEY);
        if (!stored) return;
        $text.set(following(draftOf(JSON.parse(stored))));
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
      forgetLeft();
    },
  };
}
