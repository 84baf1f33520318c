/**
 * The paper as it looks, and the steps of the best answer as plates; a keeper's photograph before what is drawn. Fetched when it
 * is opened, each picture as it comes into view.
 */
import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import { drawnSteps } from '../../core/choose/step-plates';
import type { ChooseRestStore } from '../../stores/choose/choose-rest';

interface Props {
  readonly store: Pick<ChooseRestStore, '$told' | '$job' | 'catalogue'>;
  /** path of the site's first page */
  readonly base: string;
}

/** What plates/words.json holds. */
export interface PictureWords {
  /** plate → what it teaches, how large it is, and whether there are words in it */
  readonly plates: Readonly<Record<string, readonly [teaches: string, wide: number, high: number, hasWords: boolean]>>;
  /** `papers/unryu` or `plates/rub-down` → the photograph that stands before it */
  readonly photos: Readonly<Record<string, PhotoOfPicture>>;
}
export interface PhotoOfPicture {
  /** below /photographs/ */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly alt: string;
  /** who made it, and how it may be used */
  readonly by: string;
}

const VIEWS = [
  ['flat', 'flat'],
  ['light', 'against the light'],
  ['torn', 'torn'],
] as const;

export function InPictures({ store, base }: Props) {
  const best = useStore(store.$told)[0]!;
  const { paper } = useStore(store.$job);
  const [{ plates, photos }, setWords] = useState<PictureWords>({ plates: {}, photos: {} });
  useEffect(() => {
    // without them each picture is still told by the sentence beside it
    void fetch(`${base}plates/words.json`)
      .then((answer) => answer.json())
      .then(setWords, () => undefined);
  }, []);
  const { name } = store.catalogue.papers.get(paper.family)!;
  return (
    <>
      <Photographed photo={photos[`papers/${paper.family}`]} base={base} />
      <ul class="seen-paper">
        {VIEWS.map(([view, says]) => (
          <li key={view}>
            <img
              src={`${base}swatches/${paper.family}.svg#${view}`}
              alt={`${name}, ${says}`}
              width={116}
              height={116}
              loading="lazy"
            />
            <span>{says}</span>
          </li>
        ))}
      </ul>
      <p class="field-hint">{name}, as its family looks: drawn, not a photograph.</p>
      <ol class="drawn-steps">
        {drawnSteps(best).map(({ text, plate }) => {
          const [teaches, wide, high, hasWords] = plates[plate ?? ''] ?? ['', 236, 176, false];
          return (
            <li key={text} class={hasWords ? 'broad' : undefined}>
              <Photographed photo={photos[`plates/${plate}`]} base={base} />
              {plate && (
                <img src={`${base}plates/${plate}.svg`} alt={teaches} width={wide} height={high} loading="lazy" />
              )}
              <p>{text}</p>
            </li>
          );
        })}
      </ol>
    </>
  );
}

const Photographed = ({ photo, base }: { photo: PhotoOfPicture | undefined; base: string }) =>
  photo ? (
    <figure class="photo">
      <img
        src={`${base}photographs/${photo.name}`}
        alt={photo.alt}
        width={photo.width}
        height={photo.height}
        loading="lazy"
      />
      <figcaption class="field-hint">Photograph: {photo.by}</figcaption>
    </figure>
  ) : null;
