/** Said over an answer that reckons with a bench of one's own, with the way to leave it out. */
import { benchInWords } from '../../core/bench/bench-text';
import { leaveBenchOut } from '../../stores/shared/bench-job';

export interface BenchNoteProps {
  /** as links carry it */
  readonly bench: string;
  /** path of the page where a bench is measured */
  readonly benchAt: string;
  readonly onLeaveOut: () => void;
}

export function BenchNote({ bench, benchAt, onLeaveOut }: BenchNoteProps) {
  const words = benchInWords(bench);
  if (words === '') return null;
  return (
    <p class="field-hint">
      Reckoned with a bench that was measured, {words}. <a href={benchAt}>My bench</a>{' '}
      <button
        type="button"
        class="as-link no-print"
        onClick={() => {
          leaveBenchOut();
          onLeaveOut();
        }}
      >
        Leave it out
      </button>
    </p>
  );
}
