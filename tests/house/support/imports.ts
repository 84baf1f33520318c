/** What a file imports, in whichever language it is written, and which layer that belongs to. */
import path from 'node:path';
import ts from 'typescript';
import { textOf } from './files';

/** The part of a file that holds its imports: the fence and scripts of a component, the import lines of prose. */
function codeOf(file: string): string {
  const text = textOf(file);
  if (file.endsWith('.mdx')) return [...text.matchAll(/^(?:import|export)\b.*$/gm)].map(([line]) => line).join('\n');
  if (!file.endsWith('.astro')) return text;
  const fence = /^---\r?\n([\s\S]*?)\r?\n---/.exec(text)?.[1] ?? '';
  const scripts = [...text.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)].map(([, script = '']) => script);
  return [fence, ...scripts].join('\n');
}

export function syntaxOf(file: string): ts.SourceFile {
  return ts.createSourceFile(`${file}.tsx`, codeOf(file), ts.ScriptTarget.Latest, true);
}

/** Every address in an import, a re-export, an import() or an import.meta.glob. */
export function importsOf(file: string): string[] {
  const found: string[] = [];
  const take = (node: ts.Node | undefined) => {
    if (node && ts.isStringLiteralLike(node)) found.push(node.text);
    if (node && ts.isArrayLiteralExpression(node)) node.elements.forEach(take);
  };
  const visit = (node: ts.Node) => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) take(node.moduleSpecifier);
    if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) take(node.argument.literal);
    if (ts.isCallExpression(node)) {
      const called = node.expression;
      const globs = ts.isPropertyAccessExpression(called) && called.getText() === 'import.meta.glob';
      if (called.kind === ts.SyntaxKind.ImportKeyword || globs) take(node.arguments[0]);
    }
    ts.forEachChild(node, visit);
  };
  visit(syntaxOf(file));
  return found;
}

/** `src/core/paper` → core, `content/papers/*.yaml` → content, `preact/hooks` → preact. */
export function layerOf(address: string, from: string): string {
  const alias = address.replace(/^#components\//, 'src/components/');
  const inside = address.startsWith('.') ? path.posix.join(path.posix.dirname(from), address) : alias;
  if (inside.startsWith('/') || inside.startsWith('src/') || inside.startsWith('content/') || inside.startsWith('..')) {
    const parts = inside.replace(/^\//, '').split('/');
    return parts[0] === 'src' ? (parts[1] ?? 'src') : (parts[0] ?? '');
  }
  const [scope = '', name = ''] = address.split('/');
  return scope.startsWith('@') ? `${scope}/${name}` : scope;
}
