/**
 * What the person needs, held against what the adhesive is: the part of the answer that no margin
 * carries. Traits are common practice from the records; the shares taken off are judgements of ours.
 */
import { figure, withUnit } from '../base/format';
import type { Job } from './job';
import { TASK_TRAITS, type Task } from '../records/task';
import { coolingSeconds } from '../adhesive/cooling';
import type { Adhesive, Catalogue } from '../records/records';
import type { Reason, Suitability } from './finding';
import { askedFor } from './needs';
import { middleLiquid, taskOf } from './sampling';
import type { Sheet } from '../paper/sheet';
import { hasFumes, heatAtBench, naturesOf, scalds } from '../adhesive/natures';
import { OLD_THINGS } from '../safety/old-things';

/** At this sorptivity, g/m² per √s, a joint dries as often as not where the other side is closed. From memory: foils and plastic coatings lie below. */
export const CLOSED_FACE = 0.6;

/** Share left, on a valued original, to what water does not undo: next to none, but for what heat or a solvent takes off. Judgement. */
const NOT_UNDONE = 0.01;

/** A valued original is most often an old one. */
const VALUED = ['valued-original', ...OLD_THINGS];

/**
 * Share left behind a photograph to what does not last. A judgement; that rubber cement and glue sticks are not for
 * photographs is among the statements of content/checks/practice-fresh.yaml.
 */
const BEHIND_A_PICTURE = 0.4;

/**
 * Water of a usual coat, g/m²; what brings less of it takes off less, each gram the same share. A judgement. On a
 * leaf that shows tide lines a pasted tissue, though blotted, left one and a remoistened one did not: among the
 * statements of content/checks/practice-fresh.yaml.
 */
const WETTED = 40;

/** What it costs a film where a task always wants a second go, and the pull that counts half of that, N/m. Estimates. */
const ONE_GO = 0.3;
const LIFTED_EASILY = 60;

/** m² of work for which cooking a paste is half worth its while. Estimate. */
const SMALL_JOB = 0.01;

/** What speaks against a film, where that is not the shape of the thing. */
const FILMS: Partial<Readonly<Record<Task, string>>> = {
  cover: 'Turn-ins and corners are worked while the glue still slides, and a film does not.',
  'tip-in': 'A strip of film is as thick as a leaf, and creeps as the leaf is turned.',
};

/** Share left to what is made up or bought for special cases, where an everyday adhesive would do. A judgement. */
const SPECIAL = 0.9;

/** What a binder does before bare cloth covers anything. Common practice, no source; among the reasons it stands high. */
const BACKED_FIRST = 'Glue comes through bare cloth: most binders first back it with thin paper.';
const WEAVE_WARNED = 4;

/** Weight of the warning that colours run, among the reasons: high, though the share that it takes may be small. */
const COLOURS_WARNED = 4;

type Carrier = 'water' | 'alcohol' | 'a little water' | 'none';

/** What brings the adhesive onto the sheet, and has to leave again. */
export function carrierOf(adhesive: Adhesive, catalogue: Catalogue): Carrier {
  if (adhesive.form === 'dry') return adhesive.waterLoad.middle > 5 ? 'a little water' : 'none';
  return bringsAlcohol(adhesive.parts, catalogue) ? 'alcohol' : 'water';
}

function bringsAlcohol(parts: readonly { of: string }[], catalogue: Catalogue): boolean {
  return parts.some(({ of }) => catalogue.ingredients.get(of)?.liquid === 'alcohol');
}

/** `tool` is the technique it is brought with: the job's own when left out. */
export function suitability(
  adhesive: Adhesive,
  job: Job,
  sheet: Sheet,
  catalogue: Catalogue,
  tool: string = job.tool,
): Suitability {
  let share = 1;
  let ruledOut = false;
  const notes: Reason[] = [];
  const needs = new Set(job.needs);
  const off = (left: number, code: string, text: string) => {
    share *= left;
    notes.push({ code, weight: 1 + (1 - left) * 4, against: true, text });
  };
  const out = (code: string, text: string) => {
    ruledOut = true;
    notes.push({ code, weight: 9, against: true, text });
  };
  const pro = (code: string, text: string) => notes.push({ code, weight: 1.5, against: false, text });

  askedFor(
    adhesive,
    needs,
    { off, out, pro },
    { scalds: scalds(adhesive, catalogue), natures: naturesOf(adhesive, catalogue) },
  );
  // Nobody has to say that a joint should last and bend a little.
  if (!needs.has('long-lived') && adhesive.longLived !== 'yes') {
    off(
      adhesive.longLived === 'no' ? (sheet.photograph ? BEHIND_A_PICTURE : 0.8) : 0.95,
      'ages',
      adhesive.longLived === 'no'
        ? 'It does not last: it yellows, stains or lets go with age.'
        : 'How well it ages depends on the make.',
    );
  }
  const task = taskOf(job);
  const traits = TASK_TRAITS[task];
  if (!needs.has('flexes') && adhesive.flexes !== 'yes') {
    const left = traits.stiff[adhesive.flexes];
    if (left < 1) off(left, 'stiff', 'It dries stiffer than a vinyl film.');
  }
  if (!needs.has('undo') && !needs.has('valued') && adhesive.undoneWithWater !== 'yes') {
    const left = traits.undo[adhesive.undoneWithWater];
    if (left < 1) off(left, 'kept', 'Work like this is taken apart again one day, and water does not undo it.');
  }
  if (!needs.has('damp') && adhesive.bearsDamp !== 'yes') {
    const left = traits.damp[adhesive.bearsDamp];
    if (left < 1) off(left, 'hands', 'Damp hands soften it, and a thing like this is handled.');
  }
  if (adhesive.form === 'dry' && traits.secondGo > 0) {
    const pull = adhesive.pull.middle;
    const left = 1 - ONE_GO * traits.secondGo * (pull / (pull + LIFTED_EASILY));
    if (left < 0.95) off(left, 'one-go', 'Once it touches it stays: there is no second go.');
    else share *= left;
  }
  const substrate = catalogue.substrates.get(job.substrate)!;
  // Nothing is turned in round a pane of glass or a sheet of metal.
  const turnedIn = task !== 'cover' || substrate.face !== 'non-porous';
  if (adhesive.form === 'dry' && traits.films !== undefined && turnedIn)
    off(traits.films, 'films', FILMS[task] ?? 'A film wants a flat face, and nothing goes over the top of the paper.');
  if (adhesive.form === 'dry' && adhesive.tasks && !adhesive.tasks.includes(task))
    out('task', 'It is not made for work of this kind.');
  if (adhesive.form === 'wet') {
    const { filmFormsAbove, gelsAt, viscosity } = middleLiquid(adhesive, catalogue);
    if (viscosity > catalogue.techniques.get(tool)!.thickest)
      notes.push({
        code: 'tool',
        weight: 4,
        against: true,
        text: 'It is too thick for your tool: use a brush or a card.',
      });
    if (filmFormsAbove !== undefined && job.celsius < filmFormsAbove) {
      notes.push({
        code: 'cold',
        weight: 6,
        against: true,
        text: `Below about ${figure(filmFormsAbove, 1)} °C its film does not form: it dries to a weak, chalky layer. Warm the room and the glue.`,
      });
    }
    const cools = coolingSeconds(adhesive.usedAt, gelsAt, job.celsius);
    if (cools < Infinity) pro('cools', `It grabs as it cools: in about ${withUnit(cools, 's')} in this room.`);
  }
  if ((sheet.plasticBack || substrate.plastic) && heatAtBench(adhesive) && adhesive.form === 'dry')
    off(0.6, 'melts', 'Heat can blister plastic, or shrink it.');
  // A film spans the holes of a weave; a liquid runs through them.
  if (task === 'cover' && sheet.openWeave && adhesive.form === 'wet')
    notes.push({ code: 'weave', weight: WEAVE_WARNED, against: true, text: BACKED_FIRST });
  // Nobody cooks or mixes for a strip when a jar stands open; for a day's work it is nothing.
  const small = 1 / (1 + (job.widthMm * job.heightMm) / 1e6 / SMALL_JOB);
  if (heatAtBench(adhesive))
    off(adhesive.form === 'dry' ? 0.85 : 0.75, 'heat', 'It needs heat at the bench, and a hand used to it.');
  else if (adhesive.needsHeat) {
    off(0.955 - 0.06 * small, 'cooked', 'It has to be cooked first, and keeps for days.');
  }
  if (
    adhesive.form === 'wet' &&
    adhesive.parts.length > 1 &&
    // a powder may have the name of what is made of it
    adhesive.parts.some(({ of }) => of !== adhesive.id && catalogue.adhesives.has(of))
  )
    off(0.97 - 0.05 * small, 'mixed', 'It has to be mixed first.');
  if (adhesive.form === 'wet' && adhesive.special)
    off(SPECIAL, 'special', 'It is made up or bought for special cases.');
  if (adhesive.form === 'dry' && adhesive.madeAhead) off(0.65, 'made-ahead', 'It has to be made the day before.');
  if (hasFumes(adhesive, catalogue)) off(0.75, 'fumes', 'It gives off fumes: work out of doors or under extraction.');

  const carrier = carrierOf(adhesive, catalogue);
  const wet = carrier === 'water' || carrier === 'alcohol';
  const asked = needs.has('colours');
  // A tissue or a strip, such as is pasted out on a support, is laid on something whose colours are meant.
  const ofAnother = asked && job.paper.coloursRun === undefined && traits.faces['sheet-on-support'];
  const runs = ofAnother && sheet.coloursRun === 'unlikely' ? 'possible' : sheet.coloursRun;
  if (runs !== 'unlikely') {
    const likely = runs === 'likely';
    // where nobody asked for the colours to stay, that they may run is a warning and little more
    const water = likely ? (asked ? 0.05 : 0.85) : asked ? 0.6 : 1;
    const left = {
      water,
      alcohol: likely ? (asked ? 0.5 : 0.92) : asked ? 0.8 : 1,
      'a little water': adhesive.form === 'dry' ? water ** (adhesive.waterLoad.middle / WETTED) : water,
      none: 1,
    }[carrier];
    if (left < 1) {
      share *= left;
      const may = likely ? 'the colours run: test a corner first.' : 'some colours run: test a corner.';
      const text = `Its ${carrier === 'alcohol' ? 'alcohol' : 'water'} may make ${may}`;
      notes.push({
        code: 'colours',
        weight: Math.max(likely ? COLOURS_WARNED : 0, 1 + (1 - left) * 4),
        against: true,
        text,
      });
    } else if (carrier === 'none') pro('colours', 'It brings no water, so colours stay where they are.');
  }
  if (sheet.harmedByWater && wet)
    off(
      carrier === 'water' ? 0.3 : 0.7,
      'harmed',
      'This paper cockles, goes cloudy or loses its shape when it is wetted.',
    );
  const lets = sheet.closed ? 0 : sheet.sorptivity.middle;
  const below = substrate.sorptivity.middle;
  if (wet) {
    // The water leaves by the side that drinks more; nothing says at which point it cannot leave at all.
    const opens = (lets * lets + below * below) / (CLOSED_FACE * CLOSED_FACE);
    if (opens === 0) out('closed', 'Neither side lets it dry: the water has nowhere to go.');
    else if (opens < 16)
      off(
        (opens * opens) / (1 + opens * opens),
        'closed',
        'Hardly any of its water finds a way out: it dries very slowly.',
      );
  }

  const base = { notes, cautions: needs.has('valued') ? VALUED : [] };
  if (needs.has('food')) {
    const text =
      'None of these is known to be safe where food touches it, and this page cannot tell. Use ware and adhesives sold and tested for food contact.';
    return {
      share: 0,
      verdict: 'refused',
      notes: [{ code: 'food', weight: 10, against: true, text }],
      cautions: ['food-contact'],
    };
  }
  if (needs.has('valued')) {
    const text =
      'For a valued original, ask a conservator before any adhesive touches it. What stands here is for copies and practice.';
    const left = ruledOut
      ? 0
      : adhesive.undoneWithWater === 'yes'
        ? share
        : adhesive.undoneWithWater === 'partly'
          ? share * 0.3
          : share * NOT_UNDONE;
    return {
      ...base,
      share: left,
      verdict: 'defer',
      notes: [{ code: 'valued', weight: 10, against: true, text }, ...notes],
    };
  }
  return ruledOut ? { ...base, share: 0, verdict: 'ruled-out' } : { ...base, share };
}
