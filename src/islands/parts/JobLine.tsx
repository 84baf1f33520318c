/** The job over every room: what was said of it, in one line, with the way to change it and to start afresh. */
import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import { ROOMS } from '../../core/handover/rooms';
import { $benchJob, startAfresh, takeBack } from '../../stores/shared/bench-job';
import { baseOf, type JobLineProps } from './job-line';

export function JobLine({ room, address }: JobLineProps) {
  const { facts, aside } = useStore($benchJob);
  const [line, setLine] = useState('');
  const [asideLine, setAsideLine] = useState('');
  useEffect(() => {
    let stays = true;
    if (Object.keys(facts).length === 0) return setLine('');
    // Names of papers and boards come with the records, which most rooms have anyway.
    void import('../../stores/shared/job-words').then(({ jobLine }) => {
      if (!stays) return;
      setLine(jobLine(facts));
      setAsideLine(aside ? jobLine(aside) : '');
    });
    return () => {
      stays = false;
    };
  }, [facts, aside]);
  if (line === '') return null;
  const open = (act: () => void) => () => {
    act();
    window.location.assign(address);
  };
  const fromProject = !facts['paper'] && facts['project make'] !== undefined;
  const change = `${baseOf(room, address)}${ROOMS[fromProject ? 'make' : 'choose'].path}`;
  return (
    <p class="job-now no-print">
      <span>
        Your job: <strong>{line}</strong>
      </span>{' '}
      {room !== (fromProject ? 'make' : 'choose') && (
        <a href={change}>{fromProject ? 'Change its measures' : 'Change it in the chooser'}</a>
      )}{' '}
      <button type="button" class="as-link" onClick={open(startAfresh)}>
        Start afresh
      </button>
      {asideLine !== '' && (
        <span role="status">
          The link brought this job. Yours, {asideLine}, is put aside.{' '}
          <button type="button" class="as-link" onClick={open(takeBack)}>
            Take mine back
          </button>
        </span>
      )}
    </p>
  );
}
