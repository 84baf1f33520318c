/** Judges an answer in the page, shows why, keeps what was right, and counts. */
import { adopt } from './adopt';
import { localStorageOrNone } from '../../stores/shared/device-storage';
import { answeredIn, forgetAnswered, keepAnswered } from '../../stores/lesson/answered';
import { judgeNumber, type Slip } from '../../stores/lesson/judge';

/** What somebody chose or typed in a question’s form. */
export function answer(form: HTMLFormElement): void {
  const question = form.closest<HTMLElement>('.question')!;
  const field = form.querySelector<HTMLInputElement>('input[type="text"]');
  const right = field ? judgeTyped(form, field) : judgeChosen(form, question);
  if (right === undefined) return;
  question.dataset['state'] = right ? 'right' : 'wrong';
  const lesson = question.closest<HTMLElement>('.questions')?.dataset['lesson'];
  if (lesson === undefined) return;
  const kept = !right || keepAnswered(lesson, question.id, localStorageOrNone());
  showAnswered();
  if (!kept) notKept(question);
}

/** Undefined where nothing could be judged. */
function judgeTyped(form: HTMLFormElement, field: HTMLInputElement): boolean | undefined {
  const { is = '', within = '', unit = '', slips = '[]' } = form.dataset;
  const wanted = { is: Number(is), within: Number(within), unit, slips: JSON.parse(slips) as Slip[] };
  const { verdict, says } = judgeNumber(field.value, wanted);
  field.setAttribute('aria-invalid', String(verdict === 'unread'));
  say(form, says);
  if (verdict === 'right') form.parentElement!.querySelector('details')!.open = true;
  return verdict === 'unread' ? undefined : verdict === 'right';
}

function judgeChosen(form: HTMLFormElement, question: HTMLElement): boolean | undefined {
  const chosen = new FormData(form).get('choice');
  if (chosen === null) {
    say(form, 'Choose one of the answers first.');
    return undefined;
  }
  const choice = question.querySelectorAll<HTMLElement>('.reply')[Number(chosen)]!;
  const right = choice.dataset['right'] === 'yes';
  const because = choice.querySelector('.reply-because')!;
  say(form, right ? 'Right. ' : 'No. ', ...[...because.childNodes].map((node) => node.cloneNode(true)));
  return right;
}

const say = (form: HTMLFormElement, ...parts: (string | Node)[]): void =>
  form.querySelector('.question-said')!.replaceChildren(...parts);

/** Writes beside the questions, or beside each lesson of the list, how many are done. */
export function showAnswered(): void {
  const storage = localStorageOrNone();
  for (const list of document.querySelectorAll<HTMLElement>('.questions')) {
    const lesson = list.dataset['lesson']!;
    const answered = answeredIn(lesson, storage);
    const questions = [...list.querySelectorAll<HTMLElement>('.question')];
    const done = questions.filter(({ id }) => answered.has(id));
    for (const question of done) question.dataset['done'] = 'yes';
    list.querySelector('.questions-count')!.textContent = `${done.length} of ${questions.length} done.`;
    offerToForget(list, lesson, done.length > 0);
  }
  for (const row of document.querySelectorAll<HTMLElement>('[data-questions]')) {
    const ids = row.dataset['questions']!.split(' ');
    const answered = answeredIn(row.dataset['lesson']!, storage);
    const done = ids.filter((id) => answered.has(id)).length;
    if (done > 0) row.textContent = `${done} of ${ids.length} questions done`;
  }
}

function offerToForget(list: HTMLElement, lesson: string, offered: boolean): void {
  const forget = list.querySelector<HTMLButtonElement>('.questions-forget')!;
  forget.hidden = !offered;
  forget.onclick = () => {
    forgetAnswered(lesson, localStorageOrNone());
    for (const question of list.querySelectorAll<HTMLElement>('.question')) {
      delete question.dataset['done'];
      delete question.dataset['state'];
      say(question.querySelector('form')!);
    }
    showAnswered();
    list.querySelector<HTMLElement>('.question input')?.focus();
  };
}

const notKept = (question: HTMLElement): void => {
  question.closest('.questions')!.querySelector('.questions-kept')!.textContent =
    'This browser keeps nothing, so the count ends when you leave the page.';
};

adopt(`
.question-said:not(:empty) {
  margin-block: var(--s2);
  padding-left: var(--s2);
  border-left: 3px solid var(--line);
}
.question-said > p:first-of-type {
  display: inline;
}
[data-state='right'] .question-said {
  border-color: var(--accent);
}
.question[data-done]:not([data-state='wrong']) > p:first-child::after {
  content: ' Done.';
  color: var(--accent);
  font-weight: 600;
}
`);
