/** What was asked, for whoever has only the print; and what the bow rests on, each with how it is known. */
import { LEFT_AFTER_PRESSING } from '../joint/flatness';
import { figure, span, formatAmount } from '../base/format';
import { inUnit } from '../base/length-text';
import type { Fact } from '../base/fact';
import { equilibriumMoisture } from '../joint/equilibrium-moisture';
import type { FlatPlan } from './plan';
import {
  BOARD_GROWTH,
  drawWork,
  GROWS_ALONG,
  isPaperBoard,
  MIDDLE,
  STIFFER_ALONG,
  type SheetOnBoard,
  type FlatWork,
} from './plies';
import { leftPulling, PAPER_OF_WOOD, type FlatMaking } from './stages';

/** What stands behind the bow: sheet, lining, board and water, each a row. */
export function flatAnswerFacts(plan: FlatPlan, { work, glue }: FlatMaking): Fact[] {
  const { press, humidity, later, celsius } = plan;
  const { cover } = drawWork(work, MIDDLE);
  const { paper, board, water } = { ...work.cover, ...work };
  const percent = (share: number, digits = 2) => `${figure(share * 100, digits)}\u00a0%`;
  const held = (air: number) => equilibriumMoisture(celsius, air);
  const paperHolds = (air: number) => span(held(air) * PAPER_OF_WOOD.low, held(air) * PAPER_OF_WOOD.high, '%');
  const { across } = cover.ply.expansion;
  return [
    ...workFacts(plan, work),
    { label: 'Glued with', value: glue },
    {
      label: 'Water brought',
      value: span(water.low, water.high, 'g/m²'),
      note: 'coat × what is not solids; coats are from memory: weigh yours',
    },
    {
      label: 'The sheet is soaked',
      value: percent(cover.wetted),
      note: 'its share of the water, by how fast sheet and board drink; the chooser’s calibrated figure for a soaked sheet',
    },
    {
      label: 'It grows',
      value: `${percent(across * cover.wetted)} across, ${percent(cover.ply.expansion.along * cover.wetted)} along`,
      note:
        paper.grain === 'marked'
          ? 'along the grain about a tenth (common practice, book-arts list 2000)'
          : paper.grain === 'weak'
            ? `a weak grain: along it ${figure(GROWS_ALONG.weak)} times that across (estimate)`
            : 'no grain: alike both ways',
    },
    {
      label: 'Still pulling when dry',
      value: percent(leftPulling(press)),
      note: `estimate: ${percent(LEFT_AFTER_PRESSING)} after a day under weight, give or take a third, all of it without`,
    },
    {
      label: 'Stiffness',
      value: `paper ${figure(cover.ply.modulus.across)} MPa across, ${figure(STIFFER_ALONG[paper.grain])} times that along`,
      note: 'from its strength (from memory); the ratio is that of the least strengths that a specification asks of writing paper, or an estimate where the grain is weak',
    },
    {
      label: 'The board',
      value: `${span(board.thickness.low, board.thickness.high, 'mm')}, ${span(board.modulus.low, board.modulus.high, 'MPa')}`,
      note: isPaperBoard(board)
        ? `from memory: its stiffness with the grain, and a growth of ${span(BOARD_GROWTH.low * 100, BOARD_GROWTH.high * 100, '%')} across it from dry to soaked`
        : 'taken to have no grain and not to move with the air',
    },
    {
      label: 'Moisture, your room',
      value: paperHolds(humidity),
      note: `of its weight, at ${formatAmount(humidity)} % and ${formatAmount(celsius)} °C: wood holds ${figure(held(humidity))} % (published equation), paper less (estimate)`,
    },
    {
      label: 'Moisture, later',
      value: paperHolds(later),
      note: `at ${formatAmount(later)} %, the same warmth: wood ${figure(held(later))} %`,
    },
  ];
}

const GRAIN_WORDS = {
  height: 'grain up the height',
  width: 'grain across the width',
  unknown: 'grain unknown',
  none: 'no grain',
} as const;

function workFacts({ width, height, unit, boardGrain, press }: FlatPlan, { cover, lining, board }: FlatWork): Fact[] {
  const sheet = ({ paper, grain }: SheetOnBoard) =>
    `${paper.name}, ${span(paper.grammage.low, paper.grammage.high, 'g/m²')}, ${GRAIN_WORDS[grain]}`;
  return [
    { label: 'The cover', value: sheet(cover) },
    {
      label: 'On',
      value: `${board.name}, ${inUnit(width, unit)} × ${inUnit(height, unit)}\u00a0${unit}, ${GRAIN_WORDS[boardGrain]}`,
      note: `under weight for ${formatAmount(press)} h`,
    },
    ...(lining ? [{ label: 'Lined with', value: sheet(lining) }] : []),
  ];
}
