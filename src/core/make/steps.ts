/** A making order for each project, in short words. The order is common practice, no source. */
import { withMark } from './cut';
import type { MakePlan } from './fields';
import type { Measured } from './measures';
import { thicknessOf } from './plan';
import type { Deed, Step } from '../safety/hazards';

const doing = (does: readonly Deed[], text: string): Step => ({ text, does });
const cuttingOut = (does: readonly Deed[], text: string): Step => ({ text, does, cutsOut: true });

/** The steps, each with what it does that can hurt. Boards are cut with a knife, or on a board shear where there is one. */
export const makeSteps = (plan: MakePlan, m: Measured): readonly Step[] =>
  orderOf(plan, m).map((step) => (typeof step === 'string' ? { text: step } : step));

function orderOf(plan: MakePlan, m: Measured): readonly (string | Step)[] {
  const say = (mm: number) => withMark(mm, plan.unit);
  const first = cuttingOut(
    ['cut', 'shear'],
    'Find and mark the grain of board, covering and paper, then cut the boards square, one from the other.',
  );
  const corners = doing(['cut'], `Mitre the corners, leaving ${say(m.corner)} beyond the point of the board.`);
  const turn = 'Turn in head and tail, tuck the corners with a folder, then turn in the other two sides.';
  const last = doing(
    ['press'],
    'Press under weight between clean waste sheets, changed once, until it is dry: a night at least.',
  );
  const layCase =
    plan.cover === 'full'
      ? [
          `Draw the places of the boards on the wrong side of the cover, ${say(m.joint)} from board to spine strip.`,
          'Spread the cover, lay the boards and the strip on it, turn over and rub down.',
          corners,
          turn,
        ]
      : [
          `Spread the spine cloth, lay the strip in its middle and the boards ${say(m.joint)} from it; turn in head and tail.`,
          `Lay each side so that it laps the cloth by ${say(m.lap)}, and draw round it before you spread it.`,
          corners,
          'Spread the sides, lay them on, and turn in head and tail, then the fore-edge.',
        ];
  switch (plan.project) {
    case 'notebook':
      return [
        first,
        `Measure the block once more where it is thickest: the spine strip of ${say(m.spine)} hangs on it.`,
        ...(plan.back === 'none'
          ? []
          : [`Glue the ${plan.back === 'hollow' ? 'hollow' : 'lining'} on the back of the block.`]),
        ...layCase,
        'Tip or sew on the endpapers, folded; set the block in the dry case with even squares.',
        'Spread the outer leaf of one endpaper, a waste sheet under it; take that away and close the board on the leaf. Then the other.',
        'Open each board a little and lay polyester film or waxed paper between the pasted leaf and the block, with a blotter, so that the damp stays out of the leaves.',
        last,
      ];
    case 'accordion':
      return [
        first,
        cuttingOut(['cut'], 'Cut the strips with the grain along the folds.'),
        'Fold each strip in half, each half in half, then every other fold back.',
        ...(plan.sheet === undefined
          ? []
          : [`Glue strip to strip on the tabs of ${say(m.tab)}, folds square to each other.`]),
        'Spread each cover, lay its board in the middle, turn over and rub down.',
        corners,
        turn,
        `Paste the first panel on one board and the last on the other, with ${say(m.square)} to spare all round.`,
        last,
      ];
    case 'slip-case':
      return [
        first,
        cuttingOut(
          ['cut', 'shear'],
          'Cut back, top and bottom to one width, in one setting: they keep the two sides apart.',
        ),
        ...(plan.lined === 'yes'
          ? [doing(['cut'], 'Line each board before it is put together; trim the linings to their edges.')]
          : []),
        'Glue back, top and bottom on one side, then the other side on them. Try the book before the glue sets.',
        doing(
          ['cut'],
          `Lay the cover round sides and back; mitre it at the mouth, leaving ${say(m.corner)} beyond the corners.`,
        ),
        doing(
          ['cut'],
          'Turn in head and tail, then the mouth. Lay on the covers of top and bottom last, trimmed a hair short.',
        ),
        doing(['press'], 'Let it dry with a wrapped block of the book’s size inside, and a weight on it.'),
      ];
    case 'lidded-box':
      return [
        first,
        'Glue the walls round the base of the tray, long walls over the ends of the short ones.',
        'Cover the walls with the strip, its ends lapped at a corner; turn it over the rim and under the base. Cover the base.',
        `Measure the covered tray. The lid allows ${say(m.lidRoom)} of air: correct it now if your covering is thicker.`,
        'Build and cover the lid in the same way.',
        ...(plan.lined === 'yes'
          ? [doing(['cut'], 'Line the walls, then base and top, each cut to fit what you have built.')]
          : []),
        doing(['press'], 'Let both dry open, apart, with weights in them; a lid put on damp will stick and warp.'),
      ];
    case 'portfolio':
      return [
        first,
        ...layCase,
        'Paste the inner joint over spine and joints, worked into both with a folder.',
        ...(plan.ties === '0'
          ? []
          : [doing(['cut'], 'Draw the ties through slits in the boards and glue their ends down flat inside.')]),
        `Score the flaps for a wall of ${say(thicknessOf(plan) + m.slackThickness)}, fold them, and glue them on the back board.`,
        'Line both boards, over the ends of ties and flaps.',
        last,
      ];
  }
}
