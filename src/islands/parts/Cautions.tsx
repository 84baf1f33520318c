/** Cautions where the work calls for them: what each is of stands there at once, its text is folded and open on paper. */
export interface CautionText {
  readonly title: string;
  readonly text: string;
}

export function Cautions({
  ids,
  texts,
}: {
  readonly ids: readonly string[];
  readonly texts: Readonly<Record<string, CautionText>>;
}) {
  const shown = ids.flatMap((id) => texts[id] ?? []);
  return (
    <>
      {shown.map(({ title, text }) => (
        <div class="caution" role="note" aria-label={`Caution: ${title}`} key={title}>
          <details>
            <summary class="caution-title">Take care: {title}</summary>
            <p>{text}</p>
          </details>
        </div>
      ))}
    </>
  );
}
