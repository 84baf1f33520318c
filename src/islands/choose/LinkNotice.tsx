/** What a reader of a link must know: what could not be read, and when today's answer is not the one that was sent. */
import { useStore } from '@nanostores/preact';
import { adhesiveName, VERDICT_WORDS } from '../../core/choose/answer-words';
import { chanceInTen, durationSpan } from '../../core/base/format';
import { MODEL_VERSION } from '../../core/link/model-version';
import type { ChoosePageStore } from '../../stores/choose/choose-page';
import { LinkSaid } from '../parts/LinkSaid';
import { hasTrials } from './OwnTrials';

export function LinkNotice({ store }: { readonly store: ChoosePageStore }) {
  const { dropped, taught: sent } = useStore(store.$link);
  const other = useStore(store.$otherAnswer);
  const here = useStore(store.$taughtHere);
  // One's own link, on the device with the swatches, needs no word; it takes a moment to know.
  const isOwn = sent && (here === undefined ? hasTrials() : here === sent.digest);
  const taught = isOwn ? undefined : sent;
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
          {!sent &&
            (other.modelVersion === MODEL_VERSION
              ? 'Their link does not agree with this page.'
              : 'The model has been improved since; today’s answer is below.')}
        </p>
      )}
      {taught && (
        <p>
          The answer of whoever sent this had learned from{' '}
          {taught.swatches === 1 ? 'a swatch' : `${taught.swatches} swatches`}, which a link does not carry
          {taught.firsts.map(({ adhesiveId, hundredths }, i) => (
            <strong key={adhesiveId}>
              {i === 0 ? ': ' : '; '}
              {adhesiveName(adhesiveId, store.catalogue)}, {chanceInTen(hundredths / 100)}
            </strong>
          ))}
          . The answer below has not.
        </p>
      )}
    </LinkSaid>
  );
}
