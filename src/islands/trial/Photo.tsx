/** A photo of one swatch, kept on this device. What handles pictures is fetched when it is first needed. */
import { useEffect, useState } from 'preact/hooks';

interface Props {
  readonly trial: string;
  readonly number: number;
}

const photos = () => import('../../stores/trial/photos');

export function Photo({ trial, number }: Props) {
  const [address, setAddress] = useState('');
  const [said, say] = useState('');

  const show = (photo: Blob | undefined) =>
    setAddress((old) => {
      if (old) URL.revokeObjectURL(old);
      return photo ? URL.createObjectURL(photo) : '';
    });
  useEffect(() => {
    let gone = false;
    void photos()
      .then(({ photoOf }) => photoOf(trial, number))
      .then((photo) => !gone && show(photo))
      // A browser without a database takes no photos, and says so only when one is taken.
      .catch(() => undefined);
    return () => {
      gone = true;
      show(undefined);
    };
  }, [trial, number]);

  const take = async (file: File | undefined) => {
    if (!file) return;
    try {
      const { putPhoto, scaledDown } = await photos();
      const small = await scaledDown(file);
      await putPhoto(trial, number, small);
      // what is shown is kept, and is there again when the page is left at once
      show(small);
      say('');
    } catch (problem) {
      const full = problem instanceof Error && /quota/i.test(problem.name + problem.message);
      say(
        full
          ? 'There is no room for the photo on this device. The judgement is kept.'
          : 'This photo could not be read or kept. The judgement is kept.',
      );
    }
  };
  const remove = async () => {
    show(undefined);
    await (await photos()).removePhoto(trial, number).catch(() => say('The photo could not be removed.'));
  };
  return (
    <div class="field">
      <label class="field-label" for="run-photo">
        Photo
      </label>
      <input
        id="run-photo"
        type="file"
        accept="image/*"
        capture="environment"
        onChange={(event) => void take(event.currentTarget.files?.[0])}
      />
      <p class="field-hint" aria-live="polite">
        {said || 'Scaled down and kept on this device; it is sent nowhere.'}
      </p>
      {address && (
        <>
          <img class="run-photo" src={address} alt={`Swatch ${number}`} />
          <button type="button" class="button-quiet" onClick={() => void remove()}>
            Remove the photo
          </button>
        </>
      )}
    </div>
  );
}
