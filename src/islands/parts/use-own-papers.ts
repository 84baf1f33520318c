/** The papers of one's own that this device keeps, once the page is awake. */
import { useEffect, useState } from 'preact/hooks';
import { readPaper } from '../../core/paper/own-paper';
import { localStorageOrNone } from '../../stores/shared/device-storage';
import { openOwnPapers } from '../../stores/shared/own-papers';
import type { Option } from './Field';

export function useOwnPapers(): readonly string[] {
  const [papers, setPapers] = useState<readonly string[]>([]);
  useEffect(() => setPapers(openOwnPapers(localStorageOrNone()).$papers.get()), []);
  return papers;
}

export const ownOption = (text: string): Option => ({
  value: text,
  text: `Yours: ${readPaper(text)?.name ?? 'not named'}`,
});
