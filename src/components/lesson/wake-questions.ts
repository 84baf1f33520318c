/** Shows the forms, which are of no use without script; fetches what judges answers when the first answer is given, or at once where answers were kept before. */
import { ANSWERED_KEY } from '../../stores/lesson/answered-key';

export function wakeQuestions(): void {
  for (const part of document.querySelectorAll<HTMLElement>('.question-try, .questions-note')) part.hidden = false;
  document.addEventListener('submit', (event) => {
    const form = event.target as HTMLFormElement;
    if (!form.matches('.question-try')) return;
    event.preventDefault();
    import('./answering').then(
      ({ answer }) => answer(form),
      // without it, the answer itself is there to compare with
      () => form.parentElement!.querySelector('details')!.setAttribute('open', ''),
    );
  });
  try {
    if (localStorage.getItem(ANSWERED_KEY)) void import('./answering').then(({ showAnswered }) => showAnswered());
  } catch {
    // a browser that keeps nothing has nothing to show
  }
}
