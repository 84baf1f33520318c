/** Records as options of a list, by name; made at build so that the trial pages carry names and no numbers. */
import { named, type Option } from '../../islands/parts/Field';
import { catalogue } from '../../data/catalogue';

export const options: Readonly<Record<'papers' | 'adhesives' | 'substrates' | 'tools', readonly Option[]>> = {
  papers: named(catalogue.papers),
  adhesives: named(catalogue.adhesives),
  substrates: named(catalogue.substrates),
  // what most people take stands first
  tools: named(catalogue.techniques).sort(
    (a, b) => Number(b.value === 'brush-full') - Number(a.value === 'brush-full'),
  ),
};
