/** How to apply the adhesive that was chosen: who gets the glue, with what, how much, and how to dry it. Common practice throughout. */
import { span } from './format';
import type { Range } from './quantity';
import type { Facts } from './reasons';
import type { Catalogue } from './records';

export interface Technique {
  readonly glueGoesOn: 'the paper' | 'the board' | 'both';
  readonly tool: string;
  /** wet coat, g/m²; absent for what is not spread */
  readonly coat?: Range;
  /** minutes to let the pasted sheet relax before laying; 0 when it should go down at once */
  readonly relaxMinutes: number;
  readonly placeBeforeContact: boolean;
  /** what to do, in order, each a sentence */
  readonly steps: readonly string[];
}

/** At or below this a sheet is too weak when wet for a brush, whatever the glue. Common practice, no source. */
export const FINGERTIP_GRAMMAGE = 30;

export function techniqueFor(facts: Facts, catalogue: Catalogue): Technique {
  return facts.adhesive.form === 'dry' ? dryTechnique(facts) : wetTechnique(facts, catalogue);
}

function dryTechnique({ adhesive, slipSeconds, needed }: Facts): Technique {
  const appliedWith = adhesive.form === 'dry' ? adhesive.appliedWith : '';
  const placeBeforeContact = slipSeconds.p50 < needed;
  const glueGoesOn = adhesive.id === 'contact-adhesive' ? 'both' : 'the paper';
  const steps = [
    `Apply it to ${glueGoesOn === 'both' ? 'both faces' : 'the back of the paper'} with ${appliedWith}.`,
    placeBeforeContact
      ? 'Mark the place first. Lay one edge, then roll the rest down with your hand behind it.'
      : 'Lay it, check the edges, then smooth from the middle.',
    adhesive.needsHeat
      ? 'Protect the face with a clean sheet, set it with the iron, and let it cool under weight.'
      : 'Rub down through a clean sheet, from the middle to the edges.',
  ];
  return { glueGoesOn, tool: appliedWith, relaxMinutes: 0, placeBeforeContact, steps };
}

function wetTechnique({ adhesive, job, sheet, chances, slipSeconds, needed }: Facts, catalogue: Catalogue): Technique {
  const substrate = catalogue.substrates.get(job.substrate)!;
  const light = sheet.grammage.middle <= FINGERTIP_GRAMMAGE;
  const drags = chances.spread < 0.5;
  const boardSide = substrate.takesGlue && (drags || light || (sheet.harmedByWater && chances.flat >= 0.5));
  const tool = catalogue.techniques.get(light && job.tool === 'brush-full' ? 'fingertip' : job.tool)!;
  const name = tool.name.charAt(0).toLowerCase() + tool.name.slice(1);
  // A sheet wetted by a slow, watery paste grows; it is laid once it has stopped, or it wrinkles.
  const watery = slipSeconds.p50 > 120 && !sheet.harmedByWater;
  const relaxMinutes = boardSide || !watery ? 0 : sheet.grain === 'none' ? 2 : sheet.grammage.middle > 150 ? 5 : 3;
  const placeBeforeContact = light || slipSeconds.p50 < needed;
  const heavy = sheet.surface === 'embossed';
  const steps = [
    adhesive.form === 'wet' && adhesive.usedAt !== undefined
      ? `Keep it at about ${adhesive.usedAt} °C, no hotter, and warm the pieces.`
      : '',
    `Put the glue on ${boardSide ? 'the board, not the paper' : 'the back of the paper'}: ${name}, from the middle out over the edges, about ${span(tool.coat.low, tool.coat.high, 'g/m²')} wet.`,
    relaxMinutes > 0 ? `Let the pasted sheet relax for about ${relaxMinutes} min, until it lies limp and flat.` : '',
    placeBeforeContact
      ? 'Hold it over its place and get it right before it touches; let it down from one edge and do not lift it again.'
      : 'Lay it, check the corners, and move it while it still slides.',
    heavy
      ? 'Press it down with the flat of a soft brush or cloth: a bone folder would crush the pattern.'
      : 'Rub down through a clean sheet, from the middle to the edges.',
    pressing(slipSeconds.p50),
  ];
  return {
    glueGoesOn: boardSide ? 'the board' : 'the paper',
    tool: tool.id,
    coat: tool.coat,
    relaxMinutes,
    placeBeforeContact,
    steps: steps.filter(Boolean),
  };
}

/** Slow glues still hold their water when they are laid; they need longer under weight. */
function pressing(slipSeconds: number): string {
  return slipSeconds > 120
    ? 'Dry it under a board and weight with clean blotters, changed after an hour, until the next day.'
    : 'Press it under a board and weight for half an hour, then leave it under a light weight until the next day.';
}
