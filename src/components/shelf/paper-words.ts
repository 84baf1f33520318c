/** How a paper behaves when it is glued, in sentences whose numbers the core gives. */
import { figure, withUnit } from '../../core/base/format';
import { poreVolume } from '../../core/paper/paper';
import type { Paper } from '../../core/records/records';
import { uptake } from '../../core/paper/sorption';

const COLOURS = {
  unlikely: 'Its colours are unlikely to run.',
  possible: 'Some of its colours may run: wet a corner and press it on white paper.',
  likely: 'Its colours are likely to run: keep water away, or test first.',
} as const;
const GRAIN = {
  none: 'It has no grain to speak of, so it grows about as much one way as the other.',
  weak: 'Its grain is weak: mind it on large pieces.',
  marked: 'Its grain is marked: lay it parallel to the spine, and expect it to grow across.',
} as const;

export function behaviour(paper: Paper): readonly string[] {
  const [weight, density] = [paper.grammage.middle, paper.density.middle];
  const capacity = poreVolume(weight, weight / density);
  const minute = uptake({ sorptivity: paper.sorptivity.middle, seconds: 60, capacity });
  const dry = weight * paper.tensileIndex.middle;
  const across = 300 * paper.wetExpansion.middle;
  const full = minute >= capacity * 0.99;
  const lines = [
    `It is about ${withUnit(weight / density, 'µm')} thick, and its pores hold about ${withUnit(capacity, 'g/m²')} of water.`,
    paper.sorptivity.middle === 0
      ? 'Water does not enter it.'
      : full
        ? 'Laid on water, it is full within a minute.'
        : `Laid on water, it takes in about ${withUnit(minute, 'g/m²')} in a minute.`,
    `In its weaker direction the dry sheet breaks at about ${withUnit(dry, 'N/m')}, the soaked one at about ${withUnit(dry * paper.wetRetention.middle, 'N/m')}.`,
    `A sheet 300 mm across grows by about ${withUnit(across, 'mm')} when it is soaked.`,
    GRAIN[paper.grain],
    COLOURS[paper.coloursRun],
  ];
  if (paper.contact.middle < 0.9)
    lines.push(
      `Only about ${figure(paper.contact.middle * 100)} % of its face touches a flat board, so a thick glue bridges the hollows.`,
    );
  if (paper.harmedByWater) lines.push('Water marks it: it cockles, goes cloudy or loses its shape where it is wetted.');
  if (paper.closed) lines.push('Its face lets no water out, so a wet glue under it dries slowly.');
  return lines;
}
