/** Which measures each project asks for. */
import { expect, test } from 'vitest';
import { PROJECT_IDS, PROJECTS } from '../../../src/core/make/projects';
import { MEASURES } from '../../../src/core/make/measures';
test('each project names its measures, and each measure is asked by some project', () => {
  const used = new Set(PROJECT_IDS.flatMap((id) => PROJECTS[id].measures));
  expect([...used].sort()).toEqual(Object.keys(MEASURES).sort());
});
