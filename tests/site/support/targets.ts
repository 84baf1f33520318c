/** Whether a thumb finds what it is to press: links of at least 24 px where they stand alone, controls of 44. */
import type { Page } from 'playwright-core';

/** WCAG 2.2, 2.5.8, asks for 24 px where a link is not part of a sentence; 44 px for what a wet thumb presses is our own. */
const LINK_PX = 24;
const CONTROL_PX = 44;

/** What is too small of a page, with everything unfolded that is folded; it stays unfolded. */
export function tooSmall(page: Page): Promise<string[]> {
  return page.evaluate(
    ({ link, control }) => {
      document.querySelectorAll('details').forEach((one) => one.setAttribute('open', ''));
      const blockOf = (element: Element): Element =>
        getComputedStyle(element).display.startsWith('inline') && element.parentElement
          ? blockOf(element.parentElement)
          : element;
      const inSentence = (element: Element) => {
        const others = (blockOf(element).textContent ?? '').replace(element.textContent ?? '', '');
        return getComputedStyle(element).display === 'inline' && /\p{L}/u.test(others);
      };
      const targets = [...document.querySelectorAll('a[href], button, input, select, textarea, summary')]
        .filter(
          (one) => one.checkVisibility({ visibilityProperty: true }) && !one.closest('.visually-hidden, .skip-link'),
        )
        // what bears a label is pressed by it too
        .map((element) => ({ element, box: (element.closest('label') ?? element).getBoundingClientRect() }));
      type Box = DOMRect;
      const middle = (box: Box) => [box.x + box.width / 2, box.y + box.height / 2] as const;
      const apart = ([x, y]: readonly [number, number], box: Box) =>
        Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
      /** small, but with nothing else within the circle that a large one would fill: the exception of 2.5.8 */
      const standsFree = ({ element, box }: (typeof targets)[number]) =>
        targets.every(
          (other) =>
            other.element === element ||
            (apart(middle(box), other.box) >= link / 2 &&
              (Math.min(other.box.width, other.box.height) >= link ||
                Math.hypot(middle(box)[0] - middle(other.box)[0], middle(box)[1] - middle(other.box)[1]) >= link)),
        );
      return targets.flatMap((target) => {
        const { element, box } = target;
        const isLink = element.localName === 'a' && !element.matches('.button, .button-quiet');
        if (isLink && inSentence(element)) return [];
        // a note on one number stands in a table of numbers
        const least = isLink || element.matches('.provenance > summary') ? link : control;
        const small = Math.min(box.height, isLink ? box.width : box.height) < least - 0.5;
        if (!small || (isLink && standsFree(target))) return [];
        const name = `${element.localName}.${element.className} “${(element.textContent ?? '').trim().slice(0, 30)}”`;
        return [`${name}: ${Math.round(box.width)} × ${Math.round(box.height)} px`];
      });
    },
    { link: LINK_PX, control: CONTROL_PX },
  );
}
