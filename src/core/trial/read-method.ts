/** How a swatch was made, out of a value of a file or the cells of a spreadsheet. What cannot be read is never taken for the usual. */
import { OTHER } from './method';
import { idIn, isObject, numberIn, own } from './read-value';
import { TRIAL_LIMITS, type SwatchFace, type SwatchMethod } from './record';

/** Which side got the glue. */
export const SWATCH_FACES = ['sheet', 'sheet-on-support', 'ground'] as const satisfies readonly SwatchFace[];

export interface MethodRead {
  readonly method?: SwatchMethod;
  /** what could not be read: it counts as done in some other way, never as usual */
  readonly unread: readonly (keyof SwatchMethod)[];
}

/** The method in a value from a file. Never throws. */
export function readMethod(value: unknown): MethodRead {
  if (value === undefined) return { unread: [] };
  if (!isObject(value)) return { method: { tool: OTHER }, unread: ['tool'] };
  const said = (key: keyof SwatchMethod) => own(value, key);
  const [tool, face] = [idIn(said('tool')), SWATCH_FACES.find((one) => one === said('face'))];
  const coat = numberIn(said('coat'), TRIAL_LIMITS.coat);
  const unread = (['tool', 'face', 'coat'] as const).filter(
    (key) => said(key) !== undefined && { tool, face, coat }[key] === undefined,
  );
  const method: SwatchMethod = {
    ...(unread.length > 0 ? { tool: OTHER } : tool !== undefined && { tool }),
    ...(face !== undefined && { face }),
    ...(coat !== undefined && { coat }),
  };
  return { ...(Object.keys(method).length > 0 && { method }), unread };
}
