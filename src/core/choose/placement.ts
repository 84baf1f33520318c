/** Who gets the glue, with what, and when the sheet goes down. Common practice throughout. */
import type { Finding, Placement } from './finding';
import type { Catalogue, Substrate } from '../records/records';

/** At or below this a sheet is too weak when wet for a brush, whatever the glue. Common practice, no source. */
export const FINGERTIP_GRAMMAGE = 30;

const PAPER = 'the back of the paper';

/** What lies under the sheet, as a sentence calls it. */
export const calledBelow = (substrate: Substrate): string =>
  /board/.test(substrate.id) ? 'the board' : 'the surface below';

export function placementOf(facts: Omit<Finding, never>, catalogue: Catalogue): Placement {
  const { adhesive, job, sheet, chances, slipSeconds, needed } = facts;
  const late = slipSeconds.p50 < needed;
  if (adhesive.form === 'dry') {
    const glueGoesOn = adhesive.bothFaces ? 'both faces' : PAPER;
    return { glueGoesOn, tool: adhesive.appliedWith, relaxMinutes: 0, placeBeforeContact: late };
  }
  const substrate = catalogue.substrates.get(job.substrate)!;
  const light = sheet.grammage.middle <= FINGERTIP_GRAMMAGE;
  const drags = chances.spread < 0.5;
  const below = substrate.takesGlue && (drags || light || sheet.harmedByWater);
  const tool =
    catalogue.techniques.get(light && job.tool === 'brush-full' ? 'fingertip' : job.tool) ??
    catalogue.techniques.get(job.tool)!;
  // A sheet wetted by a slow, watery paste grows; it is laid once it has stopped, or it wrinkles.
  const grows = slipSeconds.p50 > 120 && !sheet.harmedByWater && !below;
  return {
    glueGoesOn: below ? `${calledBelow(substrate)}, not the paper` : PAPER,
    tool: tool.id,
    coat: tool.coat,
    relaxMinutes: !grows ? 0 : sheet.grain === 'none' ? 2 : sheet.grammage.middle > 150 ? 5 : 3,
    placeBeforeContact: light || late,
  };
}
