/** Giving a trial away: files, a table for a post, a link, print. What makes them is fetched on the first click. */
import { useState } from 'preact/hooks';
import type { Trial } from '../../core/trial/record';
import { fileNameOf } from '../../core/trial/text';

interface Props {
  readonly trial: Trial;
  /** path of the page that reads a trial */
  readonly address: string;
}

const publish = () => import('../../core/trial/publish');
const files = () => import('../../stores/trial/files');
const reading = () => import('../../stores/trial/reading');

export function Publish({ trial, address }: Props) {
  const [said, say] = useState('');
  const [copied, setCopied] = useState('');
  const name = fileNameOf(trial.name);

  const copy = async (text: string, what: string) => {
    try {
      await navigator.clipboard.writeText(text);
      setCopied('');
      say(`${what} is copied.`);
    } catch {
      // No clipboard here: show it for the hand to copy.
      setCopied(text);
      say(`Copy ${what.toLowerCase()} from the box below.`);
    }
  };
  const page = async () => {
    const [{ trialHtml }, { save }, { summaryLater }] = await Promise.all([publish(), files(), reading()]);
    const photos = await import('../../stores/trial/photos')
      .then(async ({ dataAddressOf, photosOf }) => {
        const found = [...(await photosOf(trial.id))];
        return new Map(
          await Promise.all(found.map(async ([number, photo]) => [number, await dataAddressOf(photo)] as const)),
        );
      })
      .catch(() => undefined);
    save(`${name}.html`, 'text/html', trialHtml(trial, await summaryLater(trial), photos));
    say(photos && photos.size > 0 ? `Saved with ${photos.size} photos.` : 'Saved. It needs nothing but a browser.');
  };
  const file = async (kind: 'md' | 'csv' | 'json') => {
    const [{ trialCsv, trialMarkdown }, { save, trialsJson }, { summaryLater }] = await Promise.all([
      publish(),
      files(),
      reading(),
    ]);
    if (kind === 'md') save(`${name}.md`, 'text/markdown', trialMarkdown(trial, await summaryLater(trial)));
    else if (kind === 'csv') save(`${name}.csv`, 'text/csv', trialCsv(trial));
    else save(`${name}.json`, 'application/json', trialsJson([trial]));
    say('Saved.');
  };
  const table = async () => {
    const { markdownTable } = await publish();
    await copy(
      trial.questions.map(({ id, text }) => [text, '', ...markdownTable(trial, id)].join('\n')).join('\n\n'),
      'The table',
    );
  };
  const link = async () => {
    const { linkTail } = await files();
    const tail = await linkTail(trial).catch(() => undefined);
    if (tail === undefined)
      return say(
        'This trial is too large for a link, or this browser is too old to make one: send the page in a file.',
      );
    await copy(`${window.location.origin}${address}#${tail}`, 'The link');
  };
  const button = (text: string, act: () => Promise<unknown>, main = false) => (
    <button
      type="button"
      class={main ? 'button' : 'button-quiet'}
      onClick={() => void act().catch(() => say('This browser could not do that. Try another of the ways.'))}
    >
      {text}
    </button>
  );
  return (
    <section class="no-print" aria-labelledby="publish">
      <h2 id="publish">Give it to others</h2>
      <p>
        Everything goes out from this device by your own hand. Names and notes go with it: look it over first. The data
        can also be <a href={address.replace(/read\/$/, 'published/')}>handed in</a>, for everybody.
      </p>
      <div class="button-row">
        {button('Page in a file', page, true)}
        {button('Link', link)}
        {button('Table for a post', table)}
        {button('Spreadsheet (CSV)', () => file('csv'))}
        {button('Markdown', () => file('md'))}
        {button('Data (JSON)', () => file('json'))}
        <button type="button" class="button-quiet" onClick={() => window.print()}>
          Print
        </button>
      </div>
      <p class="field-hint" role="status">
        {said}
      </p>
      {copied && (
        <div class="field">
          <label class="field-label" for="publish-text">
            To copy
          </label>
          <textarea
            id="publish-text"
            readOnly
            rows={6}
            value={copied}
            onFocus={(event) => event.currentTarget.select()}
          />
        </div>
      )}
    </section>
  );
}
