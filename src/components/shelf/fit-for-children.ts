/** Whether children may use an adhesive, as the shelf says it: never a bare "yes" of what has a label to be read. */
import type { YesNo } from '../../core/records/adhesives';

/** `cautions` are those that are shown with it. What holds preservatives is fit once somebody has read its label. */
export const fitForChildren = (childSafe: YesNo, cautions: readonly string[]): string =>
  childSafe !== 'no' && cautions.includes('ready-made-glue') ? `${childSafe}; read its label first` : childSafe;
