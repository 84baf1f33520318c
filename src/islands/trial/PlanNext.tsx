/**
 * Where one goes from a plan. As built these are links to the other rooms; what they carry of the plan is fetched at the
 * first sign that one of them is meant, and a press before it has come waits for it.
 */
import { useState } from 'preact/hooks';
import type { AfterTrial } from '../../core/handover/trial-to-rooms';
import type { Planned } from '../../core/trial/plan';

export interface RoomAfterPlan {
  readonly id: AfterTrial;
  readonly says: string;
  /** path of its page */
  readonly path: string;
}

type Tails = Readonly<Partial<Record<AfterTrial, string>>>;

export function PlanNext({ plan, rooms }: { readonly plan: Planned; readonly rooms: readonly RoomAfterPlan[] }) {
  const [carry, setCarry] = useState<(plan: Planned) => Tails>();
  const tails = carry?.(plan);
  const bring = () =>
    import('../../core/handover/trial-to-rooms').then(
      ({ tailsAfterTrial }) => setCarry(() => tailsAfterTrial),
      // the links lead there all the same, without figures
      () => setCarry(() => () => ({})),
    );
  return (
    <nav
      class="next-steps no-print"
      aria-label="Next"
      onPointerOver={bring}
      onFocusIn={bring}
      onClick={(event) => {
        if (tails) return;
        event.preventDefault();
        void bring().then(() => (event.target as HTMLElement).click());
      }}
    >
      {rooms.map(({ id, says, path }) => (
        <a key={id} href={path + (tails?.[id] ? `?${tails[id]}` : '')}>
          {says}
        </a>
      ))}
    </nav>
  );
}
