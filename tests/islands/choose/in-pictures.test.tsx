/** The chooser's pictures: what is drawn, and before it the photographs that a keeper of the site has put there. */
import { cleanup, render, screen } from '@testing-library/preact';
import { atom } from 'nanostores';
import { afterEach, expect, test, vi } from 'vitest';
import { choose } from '../../../src/core/choose/choose';
import { DEFAULT_JOB } from '../../../src/core/choose/job';
import { drawnSteps } from '../../../src/core/choose/step-plates';
import { catalogue } from '../../../src/data/catalogue';
import { InPictures, type PictureWords } from '../../../src/islands/choose/InPictures';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const best = choose(DEFAULT_JOB, catalogue)[0]!;
const steps = drawnSteps(best);
const shown = (words: PictureWords) => {
  vi.stubGlobal('fetch', () => Promise.resolve({ json: () => Promise.resolve(words) }));
  return render(<InPictures store={{ $told: atom([best]), $job: atom(DEFAULT_JOB), catalogue }} base="/" />);
};
const photo = (alt: string) => ({ name: 'made-360.webp', width: 360, height: 240, alt, by: 'A keeper, CC BY 4.0' });
const before = (a: Element, b: Element) => (a.compareDocumentPosition(b) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;

test('without photographs there are three views of the paper and a drawing for each step', async () => {
  const teaches = 'What the first step shows.';
  shown({ plates: { [steps[0]!.plate!]: [teaches, 236, 176, false] }, photos: {} });
  expect((await screen.findByAltText(teaches)).getAttribute('src')).toBe(`/plates/${steps[0]!.plate}.svg`);
  expect(screen.getAllByRole('listitem')).toHaveLength(3 + steps.length);
  expect(screen.queryByText(/^Photograph:/)).toBeNull();
});

test('a photograph of the paper and one of a step stand before what is drawn, each with who made it', async () => {
  shown({
    plates: {},
    photos: {
      [`papers/${DEFAULT_JOB.paper.family}`]: photo('The paper on a table.'),
      [`plates/${steps[0]!.plate}`]: photo('A hand at the first step.'),
    },
  });
  const paper = await screen.findByAltText('The paper on a table.');
  expect(before(paper, screen.getByAltText(/, flat$/))).toBe(true);
  const step = screen.getByAltText('A hand at the first step.');
  const item = step.closest('li')!;
  expect(item.textContent).toContain(steps[0]!.text);
  expect(before(step, item.querySelector(`img[src="/plates/${steps[0]!.plate}.svg"]`)!)).toBe(true);
  expect(screen.getAllByText('Photograph: A keeper, CC BY 4.0')).toHaveLength(2);
});
