/** The ways in which one adhesive can be used for a job: who gets it, with what, how thick, how long to wait. */
import type { Job } from './job';
import type { Range } from '../base/quantity';
import type { Adhesive, Catalogue, Substrate, Technique } from '../records/records';
import { taskOf, type Bringing } from './sampling';
import type { Sheet } from '../paper/sheet';
import { TASK_TRAITS, type Face, type TaskTraits } from '../records/task';
import { workingSeconds } from '../joint/way';

export interface Method {
  readonly face: Face;
  /** technique id, or for dry adhesives what they are put on with */
  readonly tool: string;
  /** wet coat, g/m²; absent for what is not spread */
  readonly coat?: Range;
  /** let the pasted sheet relax, let the coat go tacky, or neither */
  readonly wait: 'none' | 'relax' | 'tacky';
  /** of waiting */
  readonly minutes: number;
  readonly press: 'rub' | 'weight' | 'clamp' | 'iron';
}

/** A method with what the sums need of it. */
export interface Bringable {
  readonly method: Method;
  readonly bringing: Bringing;
  /** how usual it is for the task, 0–1 */
  readonly usual: number;
}

/** At this weight a sheet is as likely to be pasted out on a support as brushed in the hand, g/m². Common practice, no source. */
const SUPPORTED_GRAMMAGE = 55;

/** How usual it is to glue this face, 0–1; 0 where it cannot be done. */
function usualFace(face: Face, traits: TaskTraits, sheet: Sheet, substrate: Substrate): number {
  const usual = traits.faces[face] ?? 0;
  // A limp sheet is not brushed to take another, but where the glue goes on the thing itself: a back, what is decorated.
  if (face === 'ground' && !substrate.takesGlue && !traits.small && traits.faces.ground !== 1) return 0;
  // Nobody carries a stiff sheet over on glass.
  if (face === 'sheet-on-support') return usual / (1 + (sheet.grammage.middle / SUPPORTED_GRAMMAGE) ** 6);
  return usual;
}

/** A side this long or shorter is pasted with a small brush, mm. Common practice, no source. */
const SMALL_MM = 60;

function toolsFor(job: Job, traits: TaskTraits, catalogue: Catalogue): readonly Technique[] {
  const own = job.atHand.filter((id) => catalogue.techniques.has(id));
  const small = traits.small || Math.max(job.widthMm, job.heightMm) < SMALL_MM;
  const ids =
    own.length > 0
      ? own
      : job.tool !== 'brush-full'
        ? [job.tool]
        : small
          ? ['brush-small', 'brush-thin']
          : ['brush-full', 'brush-thin'];
  const known = ids.flatMap((id) => catalogue.techniques.get(id) ?? []);
  return known.length > 0 ? known : [catalogue.techniques.get(job.tool)!];
}

/** A roller covers faster than a brush; a finger slower. Estimate. */
const PACE: Readonly<Record<string, number>> = { roller: 0.6, fingertip: 3, 'brush-small': 2, screen: 0.8, card: 0.8 };

/** Minutes until a pasted sheet has stopped growing: longer where it is thick. Common practice, no source. */
export const relaxingMinutes = (sheet: Sheet): number => Math.min(6, 2 + sheet.grammage.middle / 100);

/** Below this growth, as a share, nobody waits for a sheet. Estimate. */
const GROWTH_WORTH_WAITING = 0.005;

/** Every way to use this adhesive here. `staysOpen`: seconds for which its coat stays open at the middle of everything. */
export function methodsFor(
  adhesive: Adhesive,
  job: Job,
  sheet: Sheet,
  catalogue: Catalogue,
  staysOpen: number,
): readonly Bringable[] {
  const task = taskOf(job);
  const traits = TASK_TRAITS[task];
  const substrate = catalogue.substrates.get(job.substrate)!;
  const area = [job.widthMm, job.heightMm] as const;
  if (adhesive.form === 'dry') {
    const tool = catalogue.techniques.get(job.tool)!;
    const tacky = adhesive.bothFaces ?? false;
    const face: Face = tacky ? 'both' : 'sheet';
    const press = adhesive.needsHeat ? 'iron' : 'rub';
    const method: Method = {
      face,
      tool: adhesive.appliedWith,
      wait: tacky ? 'tacky' : 'none',
      minutes: tacky ? 15 : 0,
      press,
    };
    return [
      {
        method,
        bringing: { tool, way: { face: 'sheet', minutes: 0, workSeconds: workingSeconds(...area) } },
        usual: 1,
      },
    ];
  }
  const press = task === 'join-boards' ? 'clamp' : 'weight';
  const found: Bringable[] = [];
  for (const face of ['sheet', 'sheet-on-support', 'ground'] as const) {
    const usual = usualFace(face, traits, sheet, substrate);
    if (usual < 0.02) continue;
    for (const tool of toolsFor(job, traits, catalogue)) {
      const workSeconds = workingSeconds(...area, PACE[tool.id] ?? 1);
      const relaxing = relaxingMinutes(sheet);
      const waits = [0];
      const grows = sheet.wetExpansion.middle > GROWTH_WORTH_WAITING && !sheet.harmedByWater && !traits.small;
      if (face === 'sheet' && grows && staysOpen > relaxing * 30) waits.push(relaxing);
      for (const minutes of waits) {
        found.push({
          method: { face, tool: tool.id, coat: tool.coat, wait: minutes > 0 ? 'relax' : 'none', minutes, press },
          bringing: { tool, way: { face, minutes, workSeconds } },
          usual,
        });
      }
    }
  }
  return found;
}
