/** A job in one line, as it stands over every room: "Lokta, light 55 g/m² on binder’s board, 210 × 150 mm". */
import { lowerFirst } from '../base/format';
import { PROJECTS } from '../make/projects';
import { isPaper, paperName, readPaper } from '../paper/own-paper';
import type { Catalogue } from '../records/records';
import type { JobFacts } from './job-facts';

/** A name without what its shelf adds in brackets. */
const bare = (name: string): string => name.replace(/ \(.*\)$/, '');

/** Takes facts as links carry them and leaves out what the records do not know. Empty where nothing can be said. */
export function jobInLine(facts: JobFacts, catalogue: Catalogue): string {
  const { paper = '', on = '', wide, high, glue = '' } = facts;
  const parts: string[] = [];
  const ground = catalogue.substrates.get(on);
  if (isPaper(paper, catalogue)) {
    const { grammage, name = bare(paperName(paper, catalogue)) } = readPaper(paper)!;
    parts.push(name + (grammage === undefined ? '' : ` ${Math.round(grammage)}\u00a0g/m²`));
    if (ground) parts.push(`on ${lowerFirst(bare(ground.name))}`);
  } else if (ground) parts.push(bare(ground.name));
  const piece = wide && high ? `${wide}\u00a0×\u00a0${high}\u00a0mm` : '';
  const adhesive = catalogue.adhesives.get(glue)?.short ?? '';
  const project = PROJECTS[facts['project make'] as keyof typeof PROJECTS];
  const sizes = ['wide', 'high', 'thick'].flatMap((key) => facts[`project ${key}`] || []);
  const made =
    project && `${lowerFirst(project.title)}${sizes.length > 1 ? ` ${sizes.join('\u00a0×\u00a0')}\u00a0mm` : ''}`;
  return [parts.join(' '), piece, adhesive && `with ${adhesive}`, made].filter(Boolean).join(', ');
}
