/** The line with the job over a room, fetched once something of a job was said. */
import { useStore } from '@nanostores/preact';
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { $benchJob } from '../../stores/shared/bench-job';
import type { JobLineProps } from './job-line';

export function KnownJob(props: JobLineProps) {
  const { facts } = useStore($benchJob);
  const [Line, setLine] = useState<ComponentType<JobLineProps>>();
  const isKnown = Object.keys(facts).length > 0;
  useEffect(() => {
    if (isKnown) void import('./JobLine').then(({ JobLine }) => setLine(() => JobLine));
  }, [isKnown]);
  return Line ? <Line {...props} /> : null;
}
