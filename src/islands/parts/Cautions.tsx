/** Caution texts, where the work calls for them. */
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
          <p class="caution-title">Take care: {title}</p>
          <p>{text}</p>
        </div>
      ))}
    </>
  );
}
