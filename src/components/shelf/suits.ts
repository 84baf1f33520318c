/** Where an adhesive stands for each paper of the shelf on the usual ground, and each paper's first on any ground. */
import type { Ranked } from '../../core/choose/finding';
import { rank } from '../../core/choose/ranking';
import { DEFAULT_JOB } from '../../core/choose/job';
import { catalogue } from '../../data/catalogue';
import { answerFor, isAskedGround } from '../choose/answer-pairs';

export interface PaperStanding {
  readonly paper: string;
  readonly name: string;
  /** 1 is first */
  readonly place: number;
  readonly choice: Ranked;
}

const byName = (a: PaperStanding, b: PaperStanding) => a.name.localeCompare(b.name, 'en-GB');

/** Every paper with the place that this adhesive takes for it, by name. */
export function standingsOf(adhesive: string): readonly PaperStanding[] {
  return [...catalogue.papers.values()]
    .map(({ id, name }) => {
      const { choices } = answerFor(id);
      const at = choices.findIndex(({ adhesiveId }) => adhesiveId === adhesive);
      const choice = choices[at];
      if (!choice) throw new Error(`shelf: the chooser does not rank "${adhesive}"`);
      return { paper: id, name, place: at + 1, choice };
    })
    .sort(byName);
}

/** Every paper with the adhesive that comes first for it on this ground, by name. */
export function firstOn(ground: string): readonly PaperStanding[] {
  return [...catalogue.papers.values()]
    .map(({ id, name }) => {
      // where the pair has a page, its answer is there already
      const job = { ...DEFAULT_JOB, paper: { family: id }, substrate: ground };
      const [choice] = isAskedGround(ground) ? answerFor(id, ground).choices : rank(job, catalogue);
      if (!choice) throw new Error('shelf: the chooser gave no answer');
      return { paper: id, name, place: 1, choice };
    })
    .sort(byName);
}
