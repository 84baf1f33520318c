/** What a reader does with a calculator, and what they see of it. */
import { act, fireEvent, screen } from '@testing-library/preact';

/** Words as they read: the spaces that keep a number with its unit are spaces. */
export const text = (element: Element | null): string => (element?.textContent ?? '').replace(/[\u00a0\u202f]/g, ' ');
export const answer = (): string => text(screen.getByRole('region', { name: 'The answer' }));

/** Does something, and waits until the page has taken it in. */
export const doing = (work: () => void): Promise<void> =>
  act(async () => {
    work();
    await new Promise((done) => setTimeout(done));
  });
export const type = (label: RegExp | string, value: string): Promise<void> =>
  doing(() => fireEvent.input(screen.getByLabelText(label), { target: { value } }));
export const pick = (label: RegExp | string, value: string): Promise<void> =>
  doing(() => fireEvent.change(screen.getByLabelText(label), { target: { value } }));
export const press = (element: Element): Promise<void> => doing(() => fireEvent.click(element));

/** Effects run after the first paint, which is when a link is read. */
export const linkRead = (): Promise<void> => act(() => new Promise<void>((done) => setTimeout(done, 60)));
