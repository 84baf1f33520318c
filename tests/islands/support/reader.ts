/** What a reader does with a calculator, and what they see of it. */
import { act, fireEvent, screen } from '@testing-library/preact';

/** Words as they read: the spaces that keep a number with its unit are spaces. */
export const text = (element: Element | null): string => (element?.textContent ?? '').replace(/[\u00a0\u202f]/g, ' ');
export const answer = (): string => text(screen.getByRole('region', { name: 'The answer' }));

/** A turn later: a store tells the page of a change in the next one. */
const later = (): Promise<void> => new Promise((done) => setTimeout(done));

/** Waits until no answer is being worked out, and what was is on the page. */
async function answered(): Promise<void> {
  do await act(later);
  while (document.querySelector('[aria-busy="true"]'));
}

/** Does something, and waits until the page has taken it in. */
export const doing = async (work: () => void): Promise<void> => {
  await act(async () => {
    work();
    await later();
  });
  await answered();
};
export const type = (label: RegExp | string, value: string): Promise<void> =>
  doing(() => fireEvent.input(screen.getByLabelText(label), { target: { value } }));
export const pick = (label: RegExp | string, value: string): Promise<void> =>
  doing(() => fireEvent.change(screen.getByLabelText(label), { target: { value } }));
export const press = (element: Element): Promise<void> => doing(() => fireEvent.click(element));

/** A link is read once the page stands; what it changes is shown a turn later. */
export const linkRead = (): Promise<void> => doing(() => {});
