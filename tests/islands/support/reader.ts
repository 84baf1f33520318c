/** What a reader does with a calculator, and what they see of it. */
import { act, fireEvent, screen } from '@testing-library/preact';

/** Words as they read: the spaces that keep a number with its unit are spaces. */
export const text = (element: Element | null): string => (element?.textContent ?? '').replace(/[\u00a0\u202f]/g, ' ');
export const answer = (): string => text(screen.getByRole('region', { name: 'The answer' }));

const later = (milliseconds = 0): Promise<void> => new Promise((done) => setTimeout(done, milliseconds));

/** Waits until no answer is being worked out, and what was is on the page. */
async function answered(): Promise<void> {
  do await act(() => later());
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

/** Effects run after the first paint, which is when a link is read. */
export const linkRead = async (): Promise<void> => {
  await act(() => later(60));
  await answered();
};
