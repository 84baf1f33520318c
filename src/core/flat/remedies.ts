/** What would help: each remedy is the same plan with one thing changed, reckoned anew. */
import { liquidOf } from '../adhesive/liquid';
import { paperInSentence } from '../paper/own-paper';
import { lowerFirst, formatAmount } from '../base/format';
import type { Adhesive, Catalogue } from '../records/records';
import { makingOf, waterOf } from './making';
import type { SheetGrain, FlatPlan } from './plan';
import { isPaperBoard, flatPaper } from './plies';
import { bowsAt, farEnd, middlingBow, PRESSED_THROUGH_HOURS, worseOf, type Bow } from './stages';

export interface Remedy {
  readonly what: string;
  readonly note?: string;
  /** the plan with this one thing changed */
  readonly plan: FlatPlan;
  /** the larger of its two bows, later */
  readonly bow: Bow;
}

type Change = Omit<Remedy, 'bow'>;

/** All that apply to this plan, the flattest first. */
export function remediesFor(plan: FlatPlan, catalogue: Catalogue): readonly Remedy[] {
  const changes = [
    ...turned(plan, catalogue),
    ...linings(plan, catalogue),
    ...lessWater(plan, catalogue),
    ...timeAndRoom(plan),
    ...thicker(plan, catalogue),
  ];
  return changes
    .map((change) => {
      const later = bowsAt(makingOf(change.plan, catalogue), 'later');
      return { ...change, bow: later[worseOf(later)] };
    })
    .sort((a, b) => farEnd(a.bow) - farEnd(b.bow));
}

const other = (grain: SheetGrain): SheetGrain => (grain === 'height' ? 'width' : grain === 'width' ? 'height' : grain);

function turned(plan: FlatPlan, catalogue: Catalogue): Change[] {
  const paperTurns = other(plan.paperGrain) !== plan.paperGrain && flatPaper(catalogue, plan.paper)!.grain !== 'none';
  const board = other(plan.boardGrain);
  const boardTurns =
    board !== plan.boardGrain && board !== 'none' && isPaperBoard(catalogue.substrates.get(plan.board)!);
  return [
    ...(paperTurns
      ? [{ what: 'The cover paper’s grain turned', plan: { ...plan, paperGrain: other(plan.paperGrain) } }]
      : []),
    ...(boardTurns ? [{ what: 'The board’s grain turned', plan: { ...plan, boardGrain: board } }] : []),
  ];
}

/** Weights tried for a lining, g/m²: by tens, as papers are sold. */
const LINING_WEIGHTS = Array.from({ length: 30 }, (_, i) => 10 * (i + 1));

function linings(plan: FlatPlan, catalogue: Catalogue): Change[] {
  const lined: FlatPlan = {
    ...plan,
    lining: 'paper',
    liningGrain: plan.lining === 'paper' ? plan.liningGrain : plan.paperGrain,
  };
  const making = makingOf(lined, catalogue);
  const tried = LINING_WEIGHTS.map((liningWeight) => {
    const lining = { paper: flatPaper(catalogue, plan.liningPaper, liningWeight)!, grain: lined.liningGrain };
    return { liningWeight, bow: middlingBow({ ...making, work: { ...making.work, lining } }) };
  });
  const best = tried.reduce((a, b) => (b.bow < a.bow ? b : a));
  const name = paperInSentence(plan.liningPaper, catalogue);
  const { paper: liningPaper, paperWeight: liningWeight, paperGrain: liningGrain } = plan;
  const alike = { ...lined, liningPaper, liningWeight, liningGrain };
  const isAlike = (['lining', 'liningPaper', 'liningWeight', 'liningGrain'] as const).every(
    (field) => plan[field] === alike[field],
  );
  return [
    {
      what: `Lined inside with ${name} of ${best.liningWeight}\u00a0g/m²`,
      note: `the least bow of the weights from ${LINING_WEIGHTS[0]} to ${LINING_WEIGHTS.at(-1)} g/m², same glue, ${plan.lining === 'paper' ? 'its grain as it is' : 'grain as the cover’s'}`,
      plan: { ...lined, liningWeight: best.liningWeight },
    },
    ...(isAlike
      ? []
      : [
          {
            what: 'Both faces covered alike',
            note: 'same paper, grain and coat; the sum cancels, and in practice two sheets differ a little',
            plan: alike,
          },
        ]),
  ];
}

function lessWater(plan: FlatPlan, catalogue: Catalogue): Change[] {
  const now = catalogue.adhesives.get(plan.adhesive)!;
  const load = (adhesive: Adhesive) => waterOf(adhesive, plan, catalogue).middle;
  const yours = load(now);
  const drier = [...catalogue.adhesives.values()]
    .filter(({ childSafe }) => childSafe !== 'no')
    .map((adhesive) => ({ adhesive, water: load(adhesive) }))
    .filter(({ water }) => water < yours - 1e-9)
    .sort((a, b) => a.water - b.water);
  const swaps = (['wet', 'dry'] as const).flatMap((form): Change[] => {
    const least = drier.find(({ adhesive }) => adhesive.form === form);
    if (!least) return [];
    const brings = least.water > 0 ? `about ${formatAmount(least.water, 2)} g/m² of` : 'no';
    const note = `it brings ${brings} water, yours about ${formatAmount(yours, 2)} g/m²`;
    return [{ what: `Glued with ${least.adhesive.short}`, note, plan: { ...plan, adhesive: least.adhesive.id } }];
  });
  if (now.form === 'dry') return swaps;
  const { viscosity } = liquidOf(now, catalogue);
  const coat = catalogue.techniques.get(plan.tool)!.coat.middle;
  const tools = [...catalogue.techniques.values()].filter(
    (tool) => tool.coat.middle < coat && tool.thickest >= viscosity,
  );
  if (tools.length === 0) return swaps;
  const thin = tools.reduce((a, b) => (b.coat.middle < a.coat.middle ? b : a));
  const note = `about ${formatAmount(thin.coat.middle, 2)} g/m² wet, and yours ${formatAmount(coat, 2)}; see that it still bonds`;
  return [{ what: `A thinner coat: ${lowerFirst(thin.name)}`, note, plan: { ...plan, tool: thin.id } }, ...swaps];
}

function timeAndRoom(plan: FlatPlan): Change[] {
  const press = PRESSED_THROUGH_HOURS;
  return [
    ...(plan.press < press ? [{ what: `Left under weight for ${press}\u00a0h`, plan: { ...plan, press } }] : []),
    ...(plan.humidity === plan.later
      ? []
      : [
          {
            what: `Made and dried in the air it will live in, ${formatAmount(plan.later)}\u00a0%`,
            note: 'paper and board lying open in it for a day or two first',
            plan: { ...plan, humidity: plan.later },
          },
        ]),
  ];
}

/** mm: the next board up. */
const NEXT_BOARD = 0.5;

function thicker(plan: FlatPlan, catalogue: Catalogue): Change[] {
  const now = plan.boardThick ?? catalogue.substrates.get(plan.board)!.thickness.middle;
  const boardThick = Number((now + NEXT_BOARD).toFixed(2));
  return boardThick > 20
    ? []
    : [{ what: `Board of ${formatAmount(boardThick)}\u00a0mm`, plan: { ...plan, boardThick } }];
}
