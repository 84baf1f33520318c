/**
 * Rows that come and go: each in a frame under its number, with a button that takes it away, and after the last a
 * button that adds another. The focus goes with them and is never lost.
 */
import type { ComponentChildren } from 'preact';
import { useFocusNext } from './use-focus-next';

interface Props {
  /** how many there are */
  readonly count: number;
  /** fewest and most there may be */
  readonly least?: number;
  readonly most: number;
  /** id of a row without its number, which begins at 0 */
  readonly id: string;
  /** what a row is called; its number follows */
  readonly name: string;
  /** words of the buttons; a row's number follows those that take it away */
  readonly takeWords: string;
  readonly addWords: string;
  /** class of a row's frame */
  readonly frame: string;
  /** id of what has the focus when no row is left */
  readonly rest?: string;
  /** said when there can be no more */
  readonly full?: string;
  readonly onTake: (row: number) => void;
  readonly onAdd: () => void;
  /** what stands in a row, where the button that takes it away belongs too */
  readonly children: (row: number, take: ComponentChildren) => ComponentChildren;
}

export function GrowingRows(props: Props) {
  const { count, least = 1, most, id, name, takeWords, addWords, frame, rest, full, onTake, onAdd, children } = props;
  const focusNext = useFocusNext();
  const takeButton = (row: number) =>
    count > least && (
      <button
        type="button"
        class="button-quiet"
        onClick={() => {
          onTake(row);
          focusNext(`${id}${Math.min(row, count - 2)}`, ...(rest ? [rest] : []));
        }}
      >
        {takeWords} {row + 1}
      </button>
    );
  return (
    <>
      {Array.from({ length: count }, (_, row) => (
        <fieldset class={frame} key={row} id={`${id}${row}`} tabIndex={-1}>
          <legend>
            {name} {row + 1}
          </legend>
          {children(row, takeButton(row))}
        </fieldset>
      ))}
      {count < most ? (
        <div class="button-row">
          <button
            type="button"
            class="button-quiet"
            onClick={() => {
              onAdd();
              focusNext(`${id}${count}`);
            }}
          >
            {addWords}
          </button>
        </div>
      ) : (
        full && <p class="field-hint">{full}</p>
      )}
    </>
  );
}
