/** The lessons as an Atom feed. */
import type { APIRoute } from 'astro';
import { href } from '../components/href';
import { lessonsInOrder } from '../components/lessons';
import { SITE } from '../site';
import { lastChangedIn } from '../components/last-changed';

const text = (plain: string): string =>
  plain.replace(/[<>&"]/g, (sign) => ({ '<': '&lt;', '>': '&gt;', '&': '&amp;', '"': '&quot;' })[sign]!);

export const GET: APIRoute = async ({ site }) => {
  const at = (path: `/${string}`) => new URL(href(path), site).href;
  const lessons = await lessonsInOrder();
  const lastChanged = lastChangedIn('content/lessons');
  const entries = lessons.map(({ id, filePath, data }) => ({
    id: at(`/lessons/${id}/`),
    updated: lastChanged(filePath ?? `content/lessons/${id}.mdx`),
    title: data.title,
    summary: data.summary,
  }));
  const newest = entries.map(({ updated }) => updated).reduce((a, b) => (Date.parse(a) > Date.parse(b) ? a : b));
  const body = entries.map(
    ({ id, updated, title, summary }) => `  <entry>
    <id>${id}</id>
    <link href="${id}"/>
    <title>${text(title)}</title>
    <updated>${updated}</updated>
    <summary>${text(summary)}</summary>
  </entry>
`,
  );
  return new Response(
    `<?xml version="1.0" encoding="UTF-8"?>
<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en-GB">
  <id>${at('/lessons/')}</id>
  <title>${text(SITE.name)}: lessons</title>
  <subtitle>Lessons for people who glue paper to things</subtitle>
  <link rel="self" href="${at('/feed.xml')}"/>
  <link href="${at('/lessons/')}"/>
  <author><name>${text(SITE.name)}</name></author>
  <updated>${newest}</updated>
${body.join('')}</feed>
`,
  );
};
