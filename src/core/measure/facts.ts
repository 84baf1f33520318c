/** What is known of one's own paper, each figure with how sure it is; and what to do better. */
import { chanceInTen, figure, span, withUnit, formatAmount } from '../base/format';
import { grainName, TEST_TRUST, type GrainFinding, type GrainTest } from '../paper/grain-tests';
import type { MeasurePlan } from './plan';
import type { Fact } from '../base/fact';
import { bulk, grammageFromWeighing, porosity, type Weighing } from '../paper/paper';
import type { OwnPaper } from '../paper/own-paper';
import type { Sheet } from '../paper/sheet';
import { dropFromSorptivity, readStain, STANDARD_DROP_SECONDS } from '../paper/sorption';
import { dropVolume, stainOf } from './measures';
import { sheetsToHalve } from '../paper/weighing-error';

type Drop = { readonly seconds: number; readonly factor: number } | undefined;

/** How heavy the paper is, and how sure that is. */
export function weightFact({ grammage }: Sheet, weighing: Weighing | undefined): Fact {
  if (!weighing)
    return {
      label: 'Grammage',
      value:
        grammage.basis === 'measured'
          ? withUnit(grammage.middle, 'g/m²', 3)
          : span(grammage.low, grammage.high, 'g/m²'),
      note:
        grammage.basis === 'measured' ? 'as given; a mill’s lots differ by about 4 %' : 'as its kind usually weighs',
    };
  const { value, uncertainty } = grammageFromWeighing(weighing);
  const more = sheetsToHalve(weighing);
  return {
    label: 'Grammage',
    value: `${figure(value, 3)} ± ${figure(uncertainty)}\u00a0g/m²`,
    note: `95 in 100; ${
      more === undefined
        ? 'more sheets would not help, for it is the cut that is uncertain: cut larger pieces'
        : `weigh ${formatAmount(more, 6)} pieces together to halve the ±`
    }`,
  };
}

/** How thick, dense and bulky the paper is. */
export function thicknessFacts({ grammage, density }: Sheet, paper: OwnPaper): Fact[] {
  const gsm = grammage.middle;
  const um = paper.caliper ?? gsm / density.middle;
  const by = paper.caliper === undefined ? 'by the density of its kind' : 'from its thickness';
  return [
    {
      label: 'Caliper',
      value:
        paper.caliper === undefined
          ? span(grammage.low / density.high, grammage.high / density.low, 'µm')
          : withUnit(um, 'µm', 3),
      note: paper.caliper === undefined ? by : `${figure(um / 25.4, 2)} thousandths of an inch (points)`,
    },
    {
      label: 'Apparent density',
      value: withUnit(gsm / um, 'g/cm³', 2),
      note: `bulk ${figure(bulk(gsm, um), 3)} cm³/g, ${by}`,
    },
    {
      label: 'Room for water',
      value: withUnit(um * porosity(gsm, um), 'g/m²'),
      note: `${figure(100 * porosity(gsm, um))} % of the sheet is air`,
    },
  ];
}

/** How fast the paper drinks, and how sure that is. */
export function drinkFacts(plan: MeasurePlan, { sorptivity }: Sheet, drop: Drop, count: number): Fact[] {
  const value = `${span(sorptivity.low, sorptivity.high, 'g/m²')} per √s`;
  const cobb = `a Cobb 60 of about ${figure(sorptivity.middle * Math.sqrt(60))} g/m²`;
  const basis = drop
    ? `from ${count === 1 ? 'one drop' : `${count} drops, middle ${figure(drop.seconds)} s`}, good to a factor of ${figure(Math.sqrt(sorptivity.high / sorptivity.low))} each way; ${cobb}`
    : sorptivity.basis === 'measured'
      ? `from your Cobb figure; a drop would take about ${figure(dropFromSorptivity(sorptivity.middle))} s to sink in`
      : `by its kind or sizing; ${cobb}`;
  return [{ label: 'Absorbency', value, note: basis }, ...(drop ? [spotFact(plan, drop.seconds)] : [])];
}

/** What the absorbency of a drop rests on: its stain, or a rule of thumb. */
function spotFact(plan: MeasurePlan, seconds: number): Fact {
  const volume = `${figure(dropVolume(plan.dropsPerMl), 2)}\u00a0µl`;
  const stain = stainOf(plan, seconds);
  if (!stain)
    return {
      label: 'The drop',
      value: `${volume}, its stain not measured`,
      note: 'read by a rule of thumb, which takes 60 s for ordinary writing paper; with the stain’s width it is a sum, and a better one',
    };
  const { load, dried, sorptivity } = readStain(stain);
  return {
    label: 'The drop',
    value: `${volume} in a stain of ${formatAmount(stain.stainMm)}\u00a0mm: ${withUnit(load, 'g/m²')}`,
    note: `so ${span(sorptivity.low, sorptivity.high, 'g/m²')} per √s; about ${figure(Math.max(0.1, 100 * dried), 1)} % of it dried meanwhile, in a room of 20 °C and 50 %`,
  };
}

const WAY_WORDS = { height: 'up and down', width: 'side to side', none: 'no grain' } as const;
export const TEST_WORDS: Readonly<Record<GrainTest, string>> = {
  bend: 'bending',
  strips: 'the two strips',
  damp: 'damping a square',
  tear: 'tearing',
};

/** Which way the grain runs, and how sure that is. `tried`: whether any of the tests was. */
export function grainFact(grain: GrainFinding, shape: MeasurePlan['shape'], tried: boolean): Fact {
  const { chances, likeliest } = grain;
  const shares = `up and down ${percent(chances.height)}, side to side ${percent(chances.width)}, none ${percent(chances.none)}; an estimate`;
  if (!tried) return { label: 'Grain', value: 'not tried yet', note: `before any test, by its kind: ${shares}` };
  const called = grainName(likeliest, shape);
  return {
    label: 'Grain',
    value: `${WAY_WORDS[likeliest]}, ${chanceInTen(chances[likeliest])}`,
    note: [called && `as you hold it, so ${called}`, shares].filter(Boolean).join('; '),
  };
}

/** Never a bare 0 or 100: four tests at a bench are not proof. */
const percent = (chance: number): string =>
  chance < 0.01 ? 'under 1 %' : chance > 0.99 ? 'over 99 %' : `${Math.round(100 * chance)} %`;

interface Known {
  readonly plan: MeasurePlan;
  readonly weighing: Weighing | undefined;
  readonly drop: Drop;
  readonly grain: GrainFinding;
  readonly gsm: number | undefined;
  readonly sheet: Sheet;
}

/** What to look out for, and what to do about it. */
export function soundness({ plan, weighing, drop, grain, gsm, sheet }: Known): string[] {
  const rough = weighing && grammageFromWeighing(weighing);
  return [
    ...(rough && rough.uncertainty / rough.value > 0.04
      ? [
          `The weight is good to ± ${figure((100 * rough.uncertainty) / rough.value)} % only, and the calculators take it as good to ± 4 %. Weigh more pieces together.`,
        ]
      : []),
    ...(plan.drinkBy === 'cobb' && gsm !== undefined && gsm < 50
      ? ['The Cobb test is not meant for sheets under 50 g/m² (ISO 535): the water goes through.']
      : []),
    ...(drop && drop.factor > 2.5
      ? [
          `Your slowest drop took ${figure(drop.factor)} times as long as your quickest: wipe the dropper, and try other places of the sheet.`,
        ]
      : []),
    ...(drop ? dropWarnings(plan, drop.seconds, sheet) : []),
    ...(grain.against.length > 0 && grain.likeliest !== 'none'
      ? [
          `${capital(grain.against.map((test) => TEST_WORDS[test]).join(' and '))} said otherwise. Do ${grain.against.length === 1 ? 'it' : 'them'} again on another corner.`,
        ]
      : []),
    ...(grain.next ? [`To settle the grain, try ${TEST_WORDS[grain.next]} next: ${trustWords(grain.next)}.`] : []),
    ...(!grain.settled && !grain.next
      ? ['Treat it as a sheet without grain, and cut it the way the pattern asks.']
      : []),
  ];
}

/** A stain may hold this many times the room that the sheet has: fibres swell, and the edge is hard to see. Our own line. */
const STAIN_HOLDS = 1.5;

function dropWarnings(plan: MeasurePlan, seconds: number, { grammage, density }: Sheet): string[] {
  const stain = stainOf(plan, seconds);
  const um = grammage.middle / density.middle;
  const room = um * porosity(grammage.middle, um);
  const load = stain && readStain(stain).load;
  return [
    ...(seconds > STANDARD_DROP_SECONDS
      ? [
          `Past ${STANDARD_DROP_SECONDS} s, where the laboratory’s drop test ends, fibres swell and the drop dries a little: the range widens.`,
        ]
      : []),
    ...(load !== undefined && load > STAIN_HOLDS * room
      ? [
          `Such a stain would hold ${withUnit(load, 'g/m²')}, and the sheet has room for about ${figure(room)}. Water ran out below, or the drops were smaller: count them to the millilitre, and measure the stain at its widest, from both sides.`,
        ]
      : []),
  ];
}

const trustWords = (test: GrainTest): string =>
  `it shows the true way about ${Math.round(10 * TEST_TRUST[test].right)} times in 10`;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
