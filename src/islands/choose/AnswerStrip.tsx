/** The answer in one line. */
import { useStore } from '@nanostores/preact';
import { VERDICT_WORDS } from '../../core/choose/answer-words';
import { durationSpan } from '../../core/base/format';
import type { ChooseStore } from '../../stores/choose/choose';

/** On a phone the answer stays in view while the fields are filled in. */
export function AnswerStrip({ store, href }: { readonly store: ChooseStore; readonly href: string }) {
  const best = useStore(store.$choices)[0]!;
  return (
    <a class="bench-strip no-print" href={href}>
      <span>
        {VERDICT_WORDS[best.verdict]}: {store.catalogue.adhesives.get(best.adhesiveId)!.short}
      </span>
      <span class="number">{durationSpan(best.slipSeconds.p10, best.slipSeconds.p90)}</span>
    </a>
  );
}
