/** Search and order in a table of the shelf, where each record is a `tbody` of its own, and so is the name of a family. */

/** Whether a record says every word that was typed, in any order. */
export function says(text: string, words: string): boolean {
  const plain = (one: string) => one.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const whole = plain(text);
  return plain(words)
    .split(/\s+/)
    .every((word) => whole.includes(word));
}

/** Places of the records in the order asked for: "family" (as built), "name", "2 up", "2 down". What has no figure comes last. */
export function ordered(names: readonly string[], figures: readonly (number | undefined)[], order: string): number[] {
  const sign = order.endsWith('down') ? -1 : 1;
  const byName = (a: number, b: number) => names[a]!.localeCompare(names[b]!, 'en-GB');
  const places = names.map((_, i) => i);
  if (order === 'family') return places;
  if (order === 'name') return places.sort(byName);
  return places.sort((a, b) => {
    const [left, right] = [figures[a], figures[b]];
    if (left === undefined || right === undefined) return Number(left === undefined) - Number(right === undefined);
    return (left - right) * sign || byName(a, b);
  });
}

export function bindTable(tools: HTMLElement): void {
  const table = document.getElementById(tools.dataset['table'] ?? '');
  const words = tools.querySelector('input');
  const order = tools.querySelector('select');
  const count = tools.querySelector('[role="status"]');
  if (!table || !words || !order || !count) return;
  const bodies = [...table.querySelectorAll('tbody')];
  const isFamily = (body: Element) => body.classList.contains('record-family');
  const records = bodies.filter((body) => !isFamily(body));
  const names = records.map((record) => record.querySelector('.record-name')?.textContent ?? '');
  // the words of the head alone: an opened note should not make a record findable
  const texts = records.map((record) => record.querySelector('.record-head')?.textContent ?? '');

  /** The name of a family stands only over records of it, in the order by family. */
  const nameFamilies = () => {
    let empty = true;
    for (const body of bodies.toReversed()) {
      if (!isFamily(body)) empty = empty && body.hidden;
      else {
        body.hidden = empty || order.value !== 'family';
        empty = true;
      }
    }
  };
  const show = () => {
    let shown = 0;
    records.forEach((record, i) => {
      record.hidden = !says(texts[i]!, words.value);
      if (!record.hidden) shown += 1;
    });
    const none = shown === 0 ? ' Try fewer words: a name, a surface, a sizing.' : '';
    nameFamilies();
    count.textContent = `${shown} of ${records.length} shown.${none}`;
  };
  const arrange = () => {
    nameFamilies();
    if (order.value === 'family') return table.append(...bodies);
    const column = Number.parseInt(order.value, 10);
    const figures = records.map((record) => {
      const text = record.querySelectorAll('td')[column]?.dataset['value'];
      return text === undefined ? undefined : Number(text);
    });
    for (const i of ordered(names, figures, order.value)) table.append(records[i]!);
  };
  words.addEventListener('input', show);
  order.addEventListener('change', arrange);
  tools.hidden = false;
  // what a browser kept from the last visit counts as typed
  show();
  arrange();
  // a link to a record must find it where it now stands
  if (location.hash) document.getElementById(location.hash.slice(1))?.scrollIntoView();
}
