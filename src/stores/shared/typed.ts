/** What was typed into a calculator's form before its script had come. */

/** Fields by their ids, with what they hold: text, or whether a box is ticked. */
export type Typed = Readonly<Record<string, string | boolean>>;

export const isTyped = (typed: Typed = {}): boolean => Object.keys(typed).length > 0;

/** What was typed into a form, and how the ids of its fields begin. */
export interface TypedInto {
  readonly typed?: Typed | undefined;
  readonly prefix: string;
}

/** The texts among it, by the names of the fields in this table; what is none of its fields is left out. */
export function textsTyped<F extends string>(
  { typed = {}, prefix }: TypedInto,
  fields: Readonly<Record<F, unknown>>,
): Partial<Record<F, string>> {
  const texts = Object.entries(typed).flatMap(([id, text]) => {
    const field = id.slice(prefix.length);
    return id.startsWith(prefix) && field in fields && typeof text === 'string' ? [[field, text] as const] : [];
  });
  return Object.fromEntries(texts) as Partial<Record<F, string>>;
}
