/**
 * The state of a calculator whose fields are said in a table: what was typed, as typed; the last plan
 * that made sense and its answer; what its link could not say. Nothing here computes an answer.
 */
import { atom, computed } from 'nanostores';
import { MODEL_VERSION } from '../../core/link/model-version';
import { fingerprint, sameFigures, figuresIn } from '../../core/link/pairs';
import { readTexts, textsOf, usualOf, type PlanOf, type FieldTable, type TextsOf } from '../../core/link/fields';
import { encodePlan } from '../../core/link/plan-link';
import type { InputError, Loading, Result } from '../../core/base/result';

interface Calculator<S extends FieldTable, A> {
  readonly fields: S;
  readonly answer: (plan: PlanOf<S>) => Result<A & { readonly figures: readonly number[] }> | Loading;
  /** of a form that opens with nothing measured */
  readonly unsaid?: Unsaid<S> | undefined;
}

/** What a link means by what it leaves out, where that is not the usual. */
interface Unsaid<S extends FieldTable> {
  readonly plan: PlanOf<S>;
  /** Gives a plan without what the link's text does not say whole, or without the field that is wrong, and adds it to `put`. */
  readonly settle: (plan: PlanOf<S>, put: string[], text: string, wrong?: string) => PlanOf<S>;
}

export function createPlan<S extends FieldTable, A>(
  { fields, answer, unsaid }: Calculator<S, A>,
  start: PlanOf<S> = usualOf(fields),
) {
  type Solved = { readonly plan: PlanOf<S>; readonly answer: A & { readonly figures: readonly number[] } };

  type Found = Solved | { readonly problems: readonly InputError[] } | Loading;

  const solve = (plan: PlanOf<S>): Found => {
    const found = answer(plan);
    if (found.ok) return { plan, answer: found.value };
    return 'loading' in found ? found : { problems: found.errors };
  };
  const solveTexts = (texts: TextsOf<S>, last: PlanOf<S>): Found => {
    const { plan, problems } = readTexts(texts, fields, last);
    return problems.length > 0 ? { problems } : solve(plan);
  };

  const first = solve(start);
  if (!('plan' in first))
    throw new RangeError(
      `a calculator starts at a plan that can be answered: ${'problems' in first ? first.problems[0]?.message : 'it is still loading'}`,
    );
  const $texts = atom<TextsOf<S>>(textsOf(start, fields));
  /** the last plan that made sense: its answer stays, dimmed, while the texts do not */
  const $solved = atom<Solved>(first);
  const $problems = atom<readonly InputError[]>([]);
  /** what answers these texts is still to come; until then the answer is that to the last plan */
  const $isLoading = atom(false);
  const $link = atom<{ readonly dropped: readonly string[]; readonly seen?: string }>({ dropped: [] });

  $texts.listen((texts) => {
    const next = solveTexts(texts, $solved.get().plan);
    $problems.set('problems' in next ? next.problems : []);
    $isLoading.set('loading' in next);
    if ('plan' in next) $solved.set(next);
  });

  const seenNow = ({ answer: { figures } }: Solved) => fingerprint(MODEL_VERSION, figures);
  return {
    fields,
    unsaid,
    $texts,
    $solved,
    $problems,
    $isLoading,
    $link,
    solve,
    $tail: computed($solved, (solved) => encodePlan(solved.plan, fields, seenNow(solved))),
    /** leading figures of the answer that a link's sender saw, when today's are others */
    $otherAnswer: computed([$link, $solved, $isLoading], ({ seen }, solved, isLoading) =>
      !isLoading && seen !== undefined && figuresIn(seen) && !sameFigures(seen, seenNow(solved))
        ? figuresIn(seen)
        : undefined,
    ),
    /** Answers the same texts again. */
    recheck(): void {
      $texts.set({ ...$texts.get() });
    },
    set(field: keyof S, text: string): void {
      // Once the plan is the reader's own, what a link said no longer bears on it.
      const { dropped, seen } = $link.get();
      if (seen !== undefined || dropped.length > 0) $link.set({ dropped: [] });
      $texts.set({ ...$texts.get(), [field]: text });
    },
  };
}

/** What islands read: named here, so that they know of the stores and not of what those are made from. */
export type { ReadableAtom } from 'nanostores';

/** What the parts of an island need to know of any such store. */
export type PlanStore<S extends FieldTable, A> = ReturnType<typeof createPlan<S, A>>;
