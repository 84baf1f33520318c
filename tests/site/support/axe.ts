/**
 * The rules of axe, asked of what is new. Pages are made of the same parts by the same styles, and a rule that found nothing
 * wrong with a part finds nothing wrong with the next one that is alike in all that a rule can see. So each element is
 * told by a line (`lineOf`), and a page is asked only of elements whose line no page before it had; what is said of a page
 * as a whole is asked of every one. Every element of every page: `ALL_PAGES=1`.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, ElementContext, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';
import { EVERY_PAGE } from './dist';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const ALL: RunOptions = {
  runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] },
  rules: { 'target-size': { enabled: true } },
  resultTypes: ['violations'],
  preload: false,
};
/** The rules that look at colours; the others find in the dark what they found in the light. */
const ABOUT_COLOUR = ['color-contrast', 'link-in-text-block'];
const COLOURS: RunOptions = { ...ALL, runOnly: ABOUT_COLOUR, rules: {} };
/** How large a target is depends on where it stands: `targets.ts` measures every one of them on every page. */
const APART = ['target-size', ...ABOUT_COLOUR];
const PARTS: RunOptions = { ...ALL, rules: Object.fromEntries(APART.map((id) => [id, { enabled: false }])) };

interface Asking {
  readonly axe: {
    run(context: ElementContext, options: RunOptions): Promise<AxeResults>;
    configure(of: { rules: { id: string; selector: string }[] }): void;
    readonly _audit: { readonly rules: readonly { readonly id: string; readonly selector: string }[] };
  };
  /** the first element of a page that a line tells of */
  toldBy?: ReadonlyMap<string, Element>;
}

/** Lines that were found sound: what parts are, and in what colours words stand. */
const sound = { parts: new Set<string>(), colours: new Set<string>() };

/** Puts the rules into a page, once; unless every page is asked for, they look at what is marked as fresh alone. */
export async function bringAxe(page: Page): Promise<void> {
  await page.evaluate(AXE);
  if (EVERY_PAGE) return;
  await page.evaluate(() => {
    const { axe } = globalThis as unknown as Asking;
    axe.configure({
      rules: axe._audit.rules.map(({ id, selector }) => ({ id, selector: `:is(${selector})[data-fresh]` })),
    });
  });
}

/** What the rules say against a page as it stands: all of them, or those of colours alone. */
export async function violations(page: Page, asked: 'all' | 'colours', where: string): Promise<string[]> {
  if (EVERY_PAGE) return broken(page, asked === 'all' ? ALL : COLOURS, undefined, where);
  const lines = await linesOf(page);
  const found = lines.twice.map((id) => `${where}: two of one id: ${id}`);
  for (const kind of asked === 'all' ? (['parts', 'colours'] as const) : (['colours'] as const)) {
    const fresh = lines[kind].filter((line) => !sound[kind].has(line));
    if (fresh.length === 0) continue;
    const wrong = await broken(page, kind === 'parts' ? PARTS : COLOURS, fresh, where);
    if (wrong.length === 0) for (const line of fresh) sound[kind].add(line);
    found.push(...wrong);
  }
  return found;
}

async function broken(page: Page, rules: RunOptions, fresh: readonly string[] | undefined, where: string) {
  const { violations: all } = await page.evaluate(
    ([options, lines]) => {
      const { axe, toldBy } = globalThis as unknown as Asking;
      for (const element of document.querySelectorAll('[data-fresh]')) element.removeAttribute('data-fresh');
      const chosen = lines?.map((line) => toldBy!.get(line)!);
      chosen?.forEach((element) => element.setAttribute('data-fresh', ''));
      return axe.run(chosen ? { include: chosen } : document, options);
    },
    [rules, fresh] as const,
  );
  return all.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${where}: ${id} (${help}) at ${target.join(' ')}\n${failureSummary}`),
  );
}

/**
 * One line for each kind of element that is shown: what it is and in what it stands, by tags and classes; what it says of
 * itself to those who listen; whether it has a name, and what it names is there; what kinds of things it holds; whether it
 * scrolls. And one for each way in which words are set: their colour and what they stand on, how large and how heavy, and
 * whether they are a link among other words. The first element of each is kept for `broken`.
 */
const linesOf = (page: Page): Promise<Readonly<Record<keyof typeof sound | 'twice', readonly string[]>>> =>
  page.evaluate(() => {
    const FOCUSABLE = 'a[href], button, input, select, textarea, summary, iframe, [tabindex]';
    // of these the words do not matter, but whether there are any; of those below, whether what they name is there
    const WORDS = /^(?:aria-(?:label|description|valuetext|valuenow|roledescription)|alt|title|placeholder)$/;
    const NAMES =
      /^(?:aria-(?:labelledby|describedby|controls|owns|details|errormessage|activedescendant|flowto)|for|headers)$/;
    const TOLD =
      /^(?:role|type|lang|content|http-equiv|scope|tabindex|autocomplete|style|hidden|disabled|readonly|required|open|aria-.*)$/;
    const own = (element: Element | null) =>
      element ? `${element.localName}.${[...element.classList].sort().join('.')}` : '';
    /** what an element stands in that changes what may be said of it, from the page inwards */
    const around = new Map<Element | null, string>([[null, '']]);
    const aroundOf = (element: Element): string => {
      const known = around.get(element.parentElement);
      const before = known ?? aroundOf(element.parentElement!);
      const role = element.getAttribute('role') ?? '';
      const here = element.matches(
        'a, button, label, summary, table, thead, ul, ol, dl, fieldset, figure, svg, nav, [role], [aria-hidden]',
      )
        ? `${before}>${element.localName}${role}${element.getAttribute('aria-hidden') ?? ''}`
        : before;
      around.set(element, here);
      return here;
    };
    /** the ground on which it stands, down to the first that is not clear */
    const grounds = new Map<Element | null, string>([[null, '']]);
    const groundOf = (element: Element | null): string => {
      const known = grounds.get(element);
      if (known !== undefined) return known;
      const { backgroundColor, backgroundImage, opacity } = getComputedStyle(element!);
      const clear = /, 0\)$/.test(backgroundColor) && backgroundImage === 'none' && opacity === '1';
      const ground = clear
        ? groundOf(element!.parentElement)
        : `${backgroundColor} ${backgroundImage} ${opacity} ${groundOf(element!.parentElement)}`;
      grounds.set(element, ground);
      return ground;
    };
    const told = ({ name, value }: Attr) => {
      if (WORDS.test(name)) return `${name}:${value.trim() !== ''}`;
      if (NAMES.test(name)) return `${name}:${value.split(/\s+/).every((id) => document.getElementById(id))}`;
      return TOLD.test(name) ? `${name}:${value}` : name;
    };
    const isNamed = (element: Element) =>
      (element.textContent ?? '').trim() !== '' ||
      element.querySelector('[alt]:not([alt=""]), [aria-label]:not([aria-label=""])') !== null;
    const hasWords = (element: Element | null) =>
      [...(element?.childNodes ?? [])].some((node) => node.nodeType === Node.TEXT_NODE && node.nodeValue?.trim());
    const partOf = (element: Element) => {
      const { overflow, display } = getComputedStyle(element);
      const scrolls =
        overflow !== 'visible' &&
        (element.scrollWidth > element.clientWidth || element.scrollHeight > element.clientHeight);
      const labelled = 'labels' in element && (element as HTMLInputElement).labels?.length;
      const kinds = [...element.children].map((child) => `${child.localName}:${child.getAttribute('role') ?? ''}`);
      return [
        `${own(element)} in ${own(element.parentElement)} in ${aroundOf(element)}`,
        ...[...element.attributes]
          .filter(({ name }) => !name.startsWith('data-'))
          .map(told)
          .sort(),
        `holds ${[...new Set(kinds)].sort().join()} ${element.querySelector(FOCUSABLE) !== null}`,
        `${Boolean(labelled)} ${isNamed(element)} ${hasWords(element)} ${display} ${scrolls}`,
      ].join(' | ');
    };
    const colourOf = (element: Element) => {
      const { color, fontSize, fontWeight, textDecorationLine, position, visibility } = getComputedStyle(element);
      const link =
        element.localName === 'a' ? `link in ${own(element.parentElement)} ${hasWords(element.parentElement)}` : '';
      const set = `${fontSize} ${fontWeight} ${textDecorationLine} ${position} ${visibility}`;
      return `${color} on ${groundOf(element)}: ${set} ${link} ${element.matches(':disabled, [aria-disabled="true"]')}`;
    };
    const [parts, colours] = [new Set<string>(), new Set<string>()];
    const toldBy = new Map<string, Element>();
    const tell = (of: Set<string>, line: string, element: Element) => {
      of.add(line);
      if (!toldBy.has(line)) toldBy.set(line, element);
    };
    for (const element of document.querySelectorAll('html, meta, title, body, body *:not(script, style)')) {
      if (element.closest('body') && !element.checkVisibility()) continue;
      tell(parts, partOf(element), element);
      if (hasWords(element) || 'value' in element) tell(colours, colourOf(element), element);
    }
    // two of one id: axe would have to compare all with all
    const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
    const twice = ids.filter((id, i) => ids.indexOf(id) !== i);
    Object.assign(globalThis, { toldBy });
    return { parts: [...parts], colours: [...colours], twice };
  });
