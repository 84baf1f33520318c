/** What can hurt on pages whose words are not a recipe’s: by what hands do there. */
import { cautionsFor, gravestFirst } from '../core/safety/hazards';

/** /paper/: strips are cut, a drop leaves its mark, and a sheet that nobody knows may be an old one. */
export const MEASURING = gravestFirst([
  'valued-original',
  ...cautionsFor({ steps: [{ does: ['cut', 'handle-old'] }] }),
]);

/** /trials/plan/ and /trials/run/: swatches are cut, glued and pressed; what each adhesive brings stands on its own page of the shelf. */
export const TRYING = cautionsFor({ steps: [{ does: ['cut', 'press'] }], natures: ['bottled'] });

/** /cut/: sheets and boards are cut, and where a saw takes its width, sawn. No plan does more, so its page is sent no more texts. */
export const CUTTING = cautionsFor({ steps: [{ does: ['cut', 'shear', 'saw'] }] });

/** /make/: the same of any project. */
export const MAKING = cautionsFor({ steps: [{ does: ['cut', 'shear', 'press'] }] });
