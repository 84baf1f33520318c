/** Which lessons speak of a record: by a link to it, by a preset that opens at it, or by its name. */
import { presets } from '../../data/presets';
import { lessonsInOrder } from '../lessons';
import { shortName } from '../plain-name';

export async function lessonsNaming(kind: 'papers' | 'adhesives' | 'substrates', id: string, names: readonly string[]) {
  const lessons = await lessonsInOrder();
  return lessons.filter(({ body = '' }) => isNamed(body, kind, id, names));
}

export function isNamed(text: string, kind: string, id: string, names: readonly string[]): boolean {
  if (text.includes(`/shelf/${kind}/${id}/`) || text.includes(`#${kind}-${id}`)) return true;
  // every preset lies on some ground, so only its paper counts as spoken of
  const opened = Object.entries(presets).filter(([, job]) => kind === 'papers' && job.paper.family === id);
  if (opened.some(([preset]) => text.includes(`"${preset}"`))) return true;
  return names.map(shortName).some((name) => wholeWords(name).test(text.replaceAll("'", '’')));
}

/** The name as whole words; of "Lokta, light" the first part is name enough. */
function wholeWords(name: string): RegExp {
  const said = (/^[^,:]+(?=, )/.exec(name)?.[0] ?? name).replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![\\p{L}\\p{N}-])${said}(?![\\p{L}\\p{N}-])`, 'iu');
}
