/** What the interface says, read from the code: texts of pages and components, and sentences that core and islands write. */
import ts from 'typescript';
import { filesIn, textOf } from './files';

export interface Said {
  readonly file: string;
  readonly text: string;
}

/** Code whose strings nobody reads on the screen: what a builder is told, and what is drawn as a check's own words. */
const UNREAD = /^src\/(?:schemas|build|data)\/|\/draw\/|\.d\.ts$/;

/** Strings that hold a sentence; what a template computes counts as a word. Messages of errors that are thrown are left out. */
export function interfaceText(): readonly Said[] {
  return filesIn('src')
    .filter((file) => /\.(?:ts|tsx|astro)$/.test(file) && !UNREAD.test(file))
    .flatMap((file) => {
      const source = textOf(file);
      const texts = file.endsWith('.astro') ? inComponent(source) : inCode(file, source);
      return texts.map((text) => ({ file, text: text.replace(/\s+/g, ' ').trim() }));
    })
    .filter(({ text }) => /[a-z]{2,} [a-z]/.test(text) && /[.?!]$/.test(text));
}

function inCode(file: string, source: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isThrowStatement(node) || ts.isImportDeclaration(node)) return;
    if (ts.isNewExpression(node) && /Error$/.test(node.expression.getText())) return;
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) found.push(node.text);
    if (ts.isTemplateExpression(node))
      found.push(node.head.text + node.templateSpans.map(({ literal }) => `so-much${literal.text}`).join(''));
    if (ts.isJsxElement(node) && node.children.some((child) => ts.isJsxText(child) && child.text.trim() !== ''))
      found.push(...inJsx(node));
    ts.forEachChild(node, visit);
  };
  const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  visit(ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true, kind));
  return found;
}

/** The running text of an element: what stands in it, with a word for whatever is computed. */
const inJsx = (element: ts.JsxElement): string[] => [
  element.children
    .map((child) => {
      if (ts.isJsxText(child)) return child.text;
      if (ts.isJsxElement(child)) return inJsx(child).join('');
      if (ts.isJsxExpression(child)) return child.expression && ts.isStringLiteral(child.expression) ? ' ' : 'so-much';
      return '';
    })
    .join(''),
];

/** Text of paragraphs, items and captions of an Astro component, and the sentences in its code and attributes. */
function inComponent(source: string): string[] {
  const [, fence = '', template = source] = /^---\r?\n([\s\S]*?)\r?\n---([\s\S]*)$/.exec(source) ?? [];
  const markup = template.replace(/<(script|style)\b[\s\S]*?<\/\1>/g, '');
  const blocks = [...markup.matchAll(/<(p|li|figcaption|caption|dd|h[1-6]|summary)\b[^>]*>([\s\S]*?)<\/\1>/g)].map(
    ([, , inner = '']) =>
      inner
        .replace(/\{' '\}/g, ' ')
        .replace(/\{(?:[^{}]|\{[^{}]*\})*\}/g, 'so-much')
        .replace(/<[^>]*>/g, ''),
  );
  const attributes = [...markup.matchAll(/\b(?:lede|description|caption|alt|label)="([^"]*)"/g)].map(
    ([, text = '']) => text,
  );
  return [...inCode('fence.ts', fence), ...blocks, ...attributes];
}
