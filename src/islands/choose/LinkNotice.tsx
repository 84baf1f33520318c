/** What a reader of a link must know: what could not be read, and when today's answer is not the one that was sent. */
import { useStore } from '@nanostores/preact';
import { adhesiveName, VERDICT_WORDS } from '../../core/choose/answer-words';
import { durationSpan } from '../../core/base/format';
import { MODEL_VERSION } from '../../core/link/model-version';
import type { ChoosePageStore } from '../../stores/choose/choose-page';
import { LinkSaid } from '../parts/LinkSaid';

export function LinkNotice({ store }: { readonly store: ChoosePageStore }) {
  const { dropped, taught } = useStore(store.$link);
  const other = useStore(store.$otherAnswer);
  return (
    <LinkSaid dropped={dropped}>
      {other && (
        <p>
          Whoever sent this link saw another answer:{' '}
          <strong>
            {VERDICT_WORDS[other.verdict]}, {adhesiveName(other.adhesiveId, store.catalogue)},{' '}
            {durationSpan(other.slipLow, other.slipHigh)} to move it
          </strong>
          .{' '}
          {taught
            ? `Their answer had learned from ${taught.swatches === 1 ? 'a swatch' : `${taught.swatches} swatches`} of their own, which a link does not carry.`
            : other.modelVersion === MODEL_VERSION
              ? 'Their link does not agree with this page.'
              : 'The model has been improved since; today’s answer is below.'}
        </p>
      )}
    </LinkSaid>
  );
}
