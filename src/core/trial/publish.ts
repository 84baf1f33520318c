/** A trial as CSV, Markdown and a page in a file. Every name is text: escaped for the form it goes into. */
import { cellsOf } from './analysis';
import { COLUMNS, type ColumnKey } from './columns';
import { methodOf } from './method';
import { nameIn, outcomeOf, type SwatchMethod, type Trial } from './record';
import { paperWithWeight } from './counts';
import type { TrialSummary } from './summary';
import { csvCell, escapeHtml, escapeMarkdown } from './text';
import { cellWords, percent, standingOf } from './words';

/** One row per swatch, one column per question; read back by `trialFromRows`. A mark at the start tells a spreadsheet it is UTF-8. */
export function trialCsv(trial: Trial): string {
  const before = [
    'number',
    'paper',
    'family',
    'grammage',
    'drop',
    'glue',
    'record',
    'hold',
    ...madeColumns(trial),
    'block',
  ] as const;
  const after = ['spoiled', 'by', 'at', 'note'] as const;
  const heading = (key: ColumnKey) => csvCell(COLUMNS[key][0]);
  const lines = [[...before.map(heading), ...trial.questions.map(({ text }) => csvCell(text)), ...after.map(heading)]];
  for (const swatch of trial.swatches) {
    const paper = trial.papers.find(({ id }) => id === swatch.paper);
    const glue = trial.glues.find(({ id }) => id === swatch.glue);
    lines.push(
      [
        ...[swatch.number, paper?.name, paper?.family, paper?.grammage, paper?.dropSeconds, glue?.name, glue?.record],
        swatch.hold,
        ...madeColumns(trial).map((key) => methodOf(swatch, trial)[key]),
        swatch.block,
        ...trial.questions.map(({ id }) => outcomeOf(swatch, id)),
        ...[swatch.spoiled ? 'yes' : '', swatch.by, swatch.judgedAt, swatch.note],
      ].map(csvCell),
    );
  }
  return `\ufeff${lines.map((line) => line.join(',')).join('\r\n')}\r\n`;
}

/** What is said of how any of the swatches was made. */
function madeColumns(trial: Trial): readonly (keyof SwatchMethod)[] {
  const said = trial.swatches.map((swatch) => methodOf(swatch, trial));
  return (['tool', 'face', 'coat'] as const).filter((key) => said.some((method) => method[key] !== undefined));
}

/** Headings and tables that any forum, notebook or repository renders. */
export function trialMarkdown(trial: Trial, { facts, questions, notes }: TrialSummary): string {
  const text = escapeMarkdown;
  const lines = [`# ${text(trial.name)}`, '', ...facts.flatMap((fact) => [text(fact), ''])];
  for (const { question, results, takeaways } of questions) {
    lines.push(`## ${text(question.text)}`, '');
    if (question.criterion) lines.push(`${text(question.criterion)}`, '');
    lines.push(...results.map((one) => `* ${text(one)}`), '');
    lines.push(...markdownTable(trial, question.id), '', ...takeaways.map((one) => `* ${text(one)}`), '');
  }
  lines.push(...notes.flatMap((note) => [text(note), '']));
  return `${lines.join('\n').trimEnd()}\n`;
}

/** One table of a question, ready to paste in a post. */
export function markdownTable(trial: Trial, question: string): readonly string[] {
  const cells = cellsOf(trial, question);
  const row = (parts: readonly string[]) => `| ${parts.join(' | ')} |`;
  return [
    row(['Paper', ...trial.glues.map(({ name }) => escapeMarkdown(name))]),
    row(['---', ...trial.glues.map(() => '---')]),
    ...trial.papers.map((paper) =>
      row([
        escapeMarkdown(paperWithWeight(paper)),
        ...cells
          .filter((cell) => cell.paper === paper.id)
          .map(({ passes, n, interval }) =>
            interval ? `${passes} of ${n} (${percent(interval.low)} to ${percent(interval.high)})` : 'not judged',
          ),
      ]),
    ),
  ];
}

const STYLE = `:root{color-scheme:light dark}body{max-width:44rem;margin:2rem auto;padding:0 1rem;font:1.05rem/1.55 Georgia,serif}
h1,h2{font-weight:400;line-height:1.2}table{border-collapse:collapse;width:100%;margin:1rem 0}th,td{padding:.4rem .6rem;border:1px solid #8888;text-align:left;vertical-align:top}
th{font:600 .9rem/1.4 system-ui,sans-serif}small{display:block}.box{overflow-x:auto}img{max-width:12rem;height:auto}@media print{body{margin:0;font-size:10.5pt}tr{break-inside:avoid}}`;

/** A photo that may stand in the page: data of a known kind and nothing else. */
const PHOTO = /^data:image\/(?:jpeg|png|webp);base64,[A-Za-z0-9+/]+={0,2}$/;

/** One self-contained file: no script, nothing loaded from anywhere. `photos`: swatch number → data address. */
export function trialHtml(
  trial: Trial,
  { facts, questions, notes }: TrialSummary,
  photos: ReadonlyMap<number, string> = new Map(),
): string {
  const text = escapeHtml;
  const paragraphs = facts.map((fact) => `<p>${text(fact)}</p>`).join('\n');
  const sections = questions.map(({ question, cells, results, takeaways }) => {
    const list = (sentences: readonly string[]) =>
      `<ul>${sentences.map((one) => `<li>${text(one)}</li>`).join('\n')}</ul>`;
    const head = trial.glues.map(({ name }) => `<th scope="col">${text(name)}</th>`).join('');
    const rows = trial.papers.map((paper) => {
      const own = cells.filter((cell) => cell.paper === paper.id);
      return `<tr><th scope="row">${text(paperWithWeight(paper))}</th>${own.map((cell) => `<td>${text(standingOf(cell))}<small>${text(cellWords(cell))}</small></td>`).join('')}</tr>`;
    });
    const criterion = question.criterion && `<p>${text(question.criterion)}</p>\n`;
    return `<h2>${text(question.text)}</h2>\n${criterion}${list(results)}\n<div class="box"><table><thead><tr><th scope="col">Paper</th>${head}</tr></thead>\n<tbody>${rows.join('\n')}</tbody></table></div>\n${list(takeaways)}`;
  });
  const swatches = trial.swatches.map((swatch) => {
    const photo = photos.get(swatch.number) ?? '';
    const image = PHOTO.test(photo) ? `<img src="${photo}" alt="Swatch ${swatch.number}">` : '';
    const cells = [
      ...[
        String(swatch.number),
        nameIn(trial.papers, swatch.paper),
        nameIn(trial.glues, swatch.glue),
        `${swatch.hold} s`,
      ],
      ...trial.questions.map(({ id }) => (swatch.spoiled ? 'set aside' : (outcomeOf(swatch, id) ?? ''))),
      [swatch.by, swatch.judgedAt?.slice(0, 10), swatch.note].filter(Boolean).join('; '),
    ];
    return `<tr>${cells.map((cell) => `<td>${text(cell)}</td>`).join('')}<td>${image}</td></tr>`;
  });
  const heads = [
    'Swatch',
    'Paper',
    'Adhesive',
    'Hold',
    ...trial.questions.map((question) => question.text),
    'Notes',
    'Photo',
  ];
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">
<title>${text(trial.name)}</title><style>${STYLE}</style></head><body>
<h1>${text(trial.name)}</h1>
${paragraphs}
${sections.join('\n')}
${notes.map((note) => `<p>${text(note)}</p>`).join('\n')}
<h2>Every swatch</h2>
<div class="box"><table><thead><tr>${heads.map((head) => `<th scope="col">${text(head)}</th>`).join('')}</tr></thead>
<tbody>${swatches.join('\n')}</tbody></table></div>
<p><small>Ranges are Clopper and Pearson’s at 95 %. A small trial says what happened on these swatches; the ranges say how far the truth may lie from that.</small></p>
</body></html>
`;
}
