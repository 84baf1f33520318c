/** Asked the same again, it gives the answer it gave: for slow work that most edits leave as it was. */
export function remembering<Q, A>(keyOf: (question: Q) => string, answer: (question: Q) => A): (question: Q) => A {
  let last: { readonly key: string; readonly answer: A } | undefined;
  return (question) => {
    const key = keyOf(question);
    if (last?.key !== key) last = { key, answer: answer(question) };
    return last.answer;
  };
}
