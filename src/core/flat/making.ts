/** From what was asked to the work and its water; and what of it is not in the records. */
import { cover } from '../adhesive/coverage';
import { liquidOf } from '../adhesive/liquid';
import { ALCOHOL } from '../joint/constants';
import { lowerFirst } from '../base/format';
import type { Range } from '../base/quantity';
import type { Adhesive, Catalogue, Substrate } from '../records/records';
import type { FlatPlan } from './plan';
import { flatPaper, type SheetOnBoard } from './plies';
import type { FlatMaking } from './stages';

/** Water that swells fibre, g/m² on each glued face: the coverage calculator's, or a dry adhesive's own record. */
export function waterOf(adhesive: Adhesive, plan: FlatPlan, catalogue: Catalogue): Range {
  if (adhesive.form === 'dry') return adhesive.waterLoad;
  const liquid = liquidOf(adhesive, catalogue);
  const pieces = [{ widthMm: plan.width, heightMm: plan.height, count: 1 }];
  const water = cover({ pieces, coat: catalogue.techniques.get(plan.tool)!.coat, liquid }).waterPerSquareMetre!;
  const swells = liquid.carrier === 'alcohol' ? ALCOHOL.swelling : 1;
  return { ...water, low: water.low * swells, middle: water.middle * swells, high: water.high * swells };
}

/** What a cover of this kind bends at all: a limp thing is not asked to lie flat. */
export const boardsOf = (catalogue: Catalogue): ReadonlyMap<string, Substrate> =>
  new Map([...catalogue.substrates].filter(([, { limp }]) => !limp));

/** The work that a plan without problems asks about. */
export function makingOf(plan: FlatPlan, catalogue: Catalogue): FlatMaking {
  const sheet = (id: string, weight: number | undefined, grain: SheetOnBoard['grain']): SheetOnBoard => ({
    paper: flatPaper(catalogue, id, weight)!,
    grain,
  });
  const record = catalogue.substrates.get(plan.board)!;
  const adhesive = catalogue.adhesives.get(plan.adhesive)!;
  const tool = lowerFirst(catalogue.techniques.get(plan.tool)!.name);
  const given = plan.boardThick;
  const thickness: Range =
    given === undefined ? record.thickness : { low: given, middle: given, high: given, basis: 'measured' };
  return {
    work: {
      cover: sheet(plan.paper, plan.paperWeight, plan.paperGrain),
      ...(plan.lining === 'paper' && { lining: sheet(plan.liningPaper, plan.liningWeight, plan.liningGrain) }),
      board: { ...record, thickness },
      boardGrain: plan.boardGrain,
      water: waterOf(adhesive, plan, catalogue),
    },
    glue: adhesive.form === 'wet' ? `${adhesive.short}: ${tool}` : adhesive.short,
    room: { celsius: plan.celsius, humidity: plan.humidity, later: plan.later },
    pressHours: plan.press,
    widthMm: plan.width,
    heightMm: plan.height,
  };
}
