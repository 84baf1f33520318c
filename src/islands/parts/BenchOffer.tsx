/** Where a bench of one's own comes in: said over an answer that reckons with one, offered where this device keeps one. */
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { keptBenchText } from '../../stores/shared/device-storage';
import type { BenchNoteProps } from './BenchNote';

interface BenchOfferProps {
  /** of the plan; empty where it names none */
  readonly bench: string | undefined;
  /** path of the page where a bench is measured */
  readonly benchAt: string;
  readonly onTake: (bench: string) => void;
}

/** What says so is fetched where there is one. */
export function BenchOffer({ bench, benchAt, onTake }: BenchOfferProps) {
  const [Note, setNote] = useState<ComponentType<BenchNoteProps>>();
  const [kept, setKept] = useState('');
  useEffect(() => {
    const text = keptBenchText();
    // a text that is damaged is no bench to offer; what tells is fetched where something is kept
    if (text !== '')
      void import('../../core/bench/own-bench').then(({ readBench }) => setKept(readBench(text) ? text : ''));
  }, []);
  const isNamed = Boolean(bench);
  useEffect(() => {
    if (isNamed) void import('./BenchNote').then(({ BenchNote }) => setNote(() => BenchNote));
  }, [isNamed]);
  if (bench) return Note ? <Note bench={bench} benchAt={benchAt} onLeaveOut={() => onTake('')} /> : null;
  return (
    <p class="field-hint no-print">
      {kept !== '' && (
        <>
          <button type="button" class="as-link" onClick={() => onTake(kept)}>
            Reckon with my bench
          </button>{' '}
        </>
      )}
      <a href={benchAt}>Measure your own bench</a>
    </p>
  );
}
