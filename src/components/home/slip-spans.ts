/** How long a sheet can still be moved under each adhesive: the bond-line model run over the records' ranges. */
import { bondLine } from '../../core/bond-line';
import { liquidOf } from '../../core/liquid';
import { at, type Range } from '../../core/quantity';
import { lowDiscrepancyPoints } from '../../core/random';
import { catalogue } from '../../data/catalogue';

export interface SlipSpan {
  readonly name: string;
  /** seconds; nine answers in ten lie between low and high */
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

const SAMPLES = 501;
/** one dimension for each thing that is not known to one digit */
const UNKNOWNS = ['sorptivity', 'density', 'grammage', 'board', 'coat', 'solids', 'viscosity', 'grab', 'film'] as const;

export function slipSpan(ids: { paper: string; substrate: string; adhesive: string; technique: string }): SlipSpan {
  const paper = known(catalogue.papers.get(ids.paper), ids.paper);
  const substrate = known(catalogue.substrates.get(ids.substrate), ids.substrate);
  const adhesive = known(catalogue.adhesives.get(ids.adhesive), ids.adhesive);
  const technique = known(catalogue.techniques.get(ids.technique), ids.technique);
  if (adhesive.form !== 'wet') throw new Error(`${ids.adhesive} brings no water: its slip time is stated, not computed`);
  const points = lowDiscrepancyPoints(SAMPLES, UNKNOWNS.length);
  const seconds = Array.from({ length: SAMPLES }, (_, i) => {
    const draw = (range: Range, of: (typeof UNKNOWNS)[number]) => at(range, points[i * UNKNOWNS.length + UNKNOWNS.indexOf(of)]!);
    return bondLine({
      paper: {
        grammage: draw(paper.grammage, 'grammage'),
        density: draw(paper.density, 'density'),
        sorptivity: draw(paper.sorptivity, 'sorptivity'),
        tensileIndex: paper.tensileIndex.middle,
        wetRetention: paper.wetRetention.middle,
        contact: paper.contact.middle,
      },
      substrate: { sorptivity: draw(substrate.sorptivity, 'board'), faceStrength: substrate.faceStrength.middle },
      adhesive: { ...liquidOf(adhesive, catalogue, draw), coat: draw(technique.coat, 'coat') },
      seconds: 0,
    }).slipSeconds;
  }).sort((a, b) => a - b);
  const rank = (share: number) => seconds[Math.round(share * (SAMPLES - 1))]!;
  return { name: adhesive.name, low: rank(0.05), middle: rank(0.5), high: rank(0.95) };
}

function known<T>(record: T | undefined, id: string): T {
  if (record === undefined) throw new Error(`home page: no record called "${id}"`);
  return record;
}
