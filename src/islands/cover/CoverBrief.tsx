/** The coverage calculator inside a lesson: the thing, the adhesive, the figure. */
import { useMemo } from 'preact/hooks';
import type { CoverPlan } from '../../core/cover/plan';
import { openCover } from '../../stores/cover/open-cover';
import { CoatFields, ThingFields } from './CoverFields';
import { CoverResult } from './CoverResult';
import { LessonBench, type LessonProps } from '../parts/LessonBench';

export default function CoverBrief({ start, address, name }: LessonProps<CoverPlan>) {
  const store = useMemo(() => openCover(undefined, start), []);
  const fields = { store, prefix: `${name}-` };
  return (
    <LessonBench
      {...fields}
      address={address}
      inputs={
        <>
          <ThingFields {...fields} />
          <CoatFields {...fields} />
        </>
      }
      more={['Open this in the coverage calculator', ', with the class and the figures behind it.']}
    >
      <CoverResult store={store} />
    </LessonBench>
  );
}
