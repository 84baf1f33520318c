/** Where the first place's adhesive holds, over all papers. Fetched when it is asked for. */
import { computed } from 'nanostores';
import { weightMap } from '../../core/choose/weight-map';
import type { ChooseRestStore } from './choose-rest';

/** The map of the adhesive that comes first, for the rest of the job. */
export const mapOf = ({ $choices, $job, catalogue }: ChooseRestStore) =>
  computed([$choices, $job], ([best], job) => weightMap(best!.adhesiveId, job, catalogue));
