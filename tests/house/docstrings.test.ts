/** Every exported function of core says above itself what it means; the types say the rest. */
import ts from 'typescript';
import { expect, test } from 'vitest';
import { filesIn } from './support/files';
import { syntaxOf } from './support/imports';

const isExported = (node: ts.Node): boolean =>
  ts.canHaveModifiers(node) && (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);

/** Names of exported functions, declared or assigned, that have no docstring. */
function silentIn(source: ts.SourceFile): string[] {
  return source.statements.flatMap((statement) => {
    if (!isExported(statement)) return [];
    const says = ts.getJSDocCommentsAndTags(statement).length > 0;
    if (says) return [];
    if (ts.isFunctionDeclaration(statement)) return [statement.name?.text ?? 'a function without a name'];
    if (!ts.isVariableStatement(statement)) return [];
    return statement.declarationList.declarations
      .filter(
        ({ initializer }) => initializer && (ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer)),
      )
      .map(({ name }) => name.getText());
  });
}

test('every exported function of core has a docstring', () => {
  const files = filesIn('src/core').filter((file) => file.endsWith('.ts'));
  expect(files.length).toBeGreaterThan(100);
  expect(files.flatMap((file) => silentIn(syntaxOf(file)).map((name) => `${file}: ${name}`))).toEqual([]);
});

test('one that says nothing is noticed', () => {
  const parse = (text: string) => ts.createSourceFile('a.ts', text, ts.ScriptTarget.Latest, true);
  expect(silentIn(parse('export function a() {}\nexport const b = () => 1;\nexport const c = 3;'))).toEqual(['a', 'b']);
  expect(silentIn(parse('/** Says what it is. */\nexport const b = () => 1;'))).toEqual([]);
});
