/** A drop of water timed for a field that takes its seconds: the clock, which one has to start, with all it says. */
import { StopClock } from './StopClock';
import { dropRemark, DROP_WORDS } from './drop-words';
import { STANDARD_DROP_SECONDS } from '../../core/paper/sorption';

export interface DropTimerProps {
  /** the seconds, as they would be typed */
  readonly onTimed: (seconds: string) => void;
}

export function DropTimer({ onTimed }: DropTimerProps) {
  return (
    <StopClock
      words={DROP_WORDS}
      callsAt={STANDARD_DROP_SECONDS}
      onStop={(seconds) => onTimed(seconds.toFixed(1))}
      said=", put into the field."
      remark={dropRemark}
    />
  );
}
