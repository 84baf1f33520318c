/**
 * Lets a lesson be typed as one types: a number and its unit, joined by an ordinary space, stay on one line (229 places),
 * and a link from the root, `[the chooser](/choose/)`, holds (15) under whatever sub-path the site is published at.
 */
import { keepUnits } from '../core/base/format';

/** A node of Markdown's tree, as far as it is looked at. */
interface Node {
  readonly type: string;
  value?: string;
  url?: string;
  readonly children?: readonly Node[];
}

/** Remark plugin. Units are joined in text only, never in code or in attributes. */
export function lessonText({ base }: { base: string }) {
  const folder = base.replace(/\/$/, '');
  const settle = (node: Node): void => {
    if (node.type === 'text') node.value = keepUnits(node.value ?? '');
    if (node.type === 'link' && /^\/(?!\/)/.test(node.url ?? '')) node.url = folder + node.url;
    node.children?.forEach(settle);
  };
  return settle;
}
