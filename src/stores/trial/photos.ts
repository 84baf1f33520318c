/** Photos of swatches: scaled down, kept on this device only, apart from the trials because of their size. */
import { openDB, type IDBPDatabase } from 'idb';

const DATABASE = 'open-time-photos';
const STORE = 'photos';
/** Longest side, px: enough to see fibres, little enough to keep a hundred. */
export const LONGEST_SIDE = 1000;

let opened: Promise<IDBPDatabase> | undefined;

function database(): Promise<IDBPDatabase> {
  opened ??= openDB(DATABASE, 1, { upgrade: (db) => void db.createObjectStore(STORE) });
  // A refusal today must not be remembered: the reader may allow storage and try again.
  opened.catch(() => (opened = undefined));
  return opened;
}

const keyOf = (trial: string, number: number) => `${trial}:${number}`;

export async function putPhoto(trial: string, number: number, photo: Blob): Promise<void> {
  await (await database()).put(STORE, photo, keyOf(trial, number));
}

export async function photoOf(trial: string, number: number): Promise<Blob | undefined> {
  const found: unknown = await (await database()).get(STORE, keyOf(trial, number));
  return found instanceof Blob ? found : undefined;
}

export async function removePhoto(trial: string, number: number): Promise<void> {
  await (await database()).delete(STORE, keyOf(trial, number));
}

/** Every photo of a trial, by the number of its swatch. */
export async function photosOf(trial: string): Promise<ReadonlyMap<number, Blob>> {
  const db = await database();
  const keys = (await db.getAllKeys(STORE, IDBKeyRange.bound(`${trial}:`, `${trial};`))) as string[];
  const photos = await Promise.all(
    keys.map(async (key) => [Number(key.split(':').at(-1)), await db.get(STORE, key)] as const),
  );
  return new Map(photos.filter((pair): pair is [number, Blob] => pair[1] instanceof Blob));
}

export async function removePhotosOf(trial: string): Promise<void> {
  for (const number of (await photosOf(trial)).keys()) await removePhoto(trial, number);
}

/** The picture as a JPEG whose longest side is LONGEST_SIDE. Throws when the file is no picture. */
export async function scaledDown(file: Blob): Promise<Blob> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const share = Math.min(1, LONGEST_SIDE / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * share));
  canvas.height = Math.max(1, Math.round(bitmap.height * share));
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const small = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', 0.8));
  if (!small) throw new Error('the picture could not be drawn');
  return small;
}

/** As text that can stand in a page. */
export function dataAddressOf(photo: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error ?? new Error('the photo could not be read'));
    reader.readAsDataURL(photo);
  });
}
