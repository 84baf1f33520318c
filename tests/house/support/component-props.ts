/** What a component takes, read from the `Props` at its head, and what a lesson hands it. */
import path from 'node:path';
import ts from 'typescript';
import { didYouMean } from '../../../src/schemas/ids';
import { textOf } from './files';

/** One way in which a component can be used. */
export interface Takes {
  readonly must: readonly string[];
  readonly may: readonly string[];
}

const NOTHING: Takes = { must: [], may: [] };
const both = (a: Takes, b: Takes): Takes => ({ must: [...a.must, ...b.must], may: [...a.may, ...b.may] });

/** The ways in which a component can be used, from its file: one for each member of a union. */
export function takesOf(file: string): readonly Takes[] {
  const head = /^---\r?\n([\s\S]*?)\r?\n---/.exec(textOf(file))?.[1] ?? '';
  return named('Props', parsed(file, head), file) ?? [NOTHING];
}

const parsed = (file: string, text: string) =>
  ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TS);

/** A type by its name: where it stands in this source, or in the file of ours that it is imported from. */
function named(name: string, source: ts.SourceFile, file: string): readonly Takes[] | undefined {
  for (const one of source.statements) {
    if (ts.isInterfaceDeclaration(one) && one.name.text === name) {
      const above = (one.heritageClauses ?? []).flatMap(({ types }) =>
        types.map(({ expression }) => expression.getText()),
      );
      return above.reduce<readonly Takes[]>(
        (ways, base) => crossed(ways, named(base, source, file) ?? unknown(base, file)),
        [membersOf(one.members)],
      );
    }
    if (ts.isTypeAliasDeclaration(one) && one.name.text === name) return waysOf(one.type, source, file);
    if (!ts.isImportDeclaration(one) || !ts.isStringLiteral(one.moduleSpecifier)) continue;
    const bindings = one.importClause?.namedBindings;
    const from = one.moduleSpecifier.text;
    if (!from.startsWith('.') || !bindings || !ts.isNamedImports(bindings)) continue;
    const found = bindings.elements.find((element) => element.name.text === name);
    if (!found) continue;
    const other = `${path.posix.join(path.posix.dirname(file), from)}.ts`;
    return named((found.propertyName ?? found.name).text, parsed(other, textOf(other)), other);
  }
  return undefined;
}

function waysOf(type: ts.TypeNode, source: ts.SourceFile, file: string): readonly Takes[] {
  if (ts.isParenthesizedTypeNode(type)) return waysOf(type.type, source, file);
  if (ts.isTypeLiteralNode(type)) return [membersOf(type.members)];
  if (ts.isUnionTypeNode(type)) return type.types.flatMap((one) => waysOf(one, source, file));
  if (ts.isIntersectionTypeNode(type))
    return type.types.map((one) => waysOf(one, source, file)).reduce((a, b) => crossed(a, b));
  if (ts.isTypeReferenceNode(type) && !type.typeArguments) {
    const name = type.typeName.getText();
    return named(name, source, file) ?? unknown(name, file);
  }
  return unknown(type.getText(), file);
}

const crossed = (a: readonly Takes[], b: readonly Takes[]) => a.flatMap((one) => b.map((other) => both(one, other)));

function unknown(name: string, file: string): never {
  throw new Error(`${file}: the type ${name} cannot be read here; write what a component takes as an interface`);
}

const membersOf = (members: ts.NodeArray<ts.TypeElement>): Takes => {
  const fields = members.filter(ts.isPropertySignature);
  const names = (optional: boolean) =>
    fields.filter(({ questionToken }) => (questionToken !== undefined) === optional).map(({ name }) => name.getText());
  return { must: names(false), may: names(true) };
};

export interface Tag {
  readonly name: string;
  readonly attributes: readonly string[];
}

/** The components that a lesson uses, each with the names of its attributes; not those in code and comments. */
export function tagsIn(text: string): readonly Tag[] {
  const live = text.replace(/```[\s\S]*?```|`[^`\n]*`|\{\/\*[\s\S]*?\*\/\}/g, ' ');
  return [...live.matchAll(/<([A-Z]\w*)(?=[\s/>])/g)].map(({ 0: opening, 1: name = '', index }) => ({
    name,
    attributes: [...outside(live, index + opening.length).matchAll(/([A-Za-z][\w:-]*)/g)].map(
      ([attribute]) => attribute,
    ),
  }));
}

/** From here to the end of the tag, without what stands in quotation marks or braces. */
function outside(text: string, from: number): string {
  let depth = 0;
  let quote = '';
  let left = '';
  for (const letter of text.slice(from)) {
    if (quote) {
      if (letter === quote) quote = '';
    } else if (letter === '"' || letter === "'" || letter === '`') quote = letter;
    else if (letter === '{') depth += 1;
    else if (letter === '}') depth -= 1;
    else if (depth === 0 && letter === '>') return left;
    else if (depth === 0) left += letter;
  }
  return left;
}

/** What is wrong with a tag, in words; '' where one of the ways fits. */
export function tagFault({ name, attributes }: Tag, ways: readonly Takes[]): string {
  const known = ways.flatMap(({ must, may }) => [...must, ...may]);
  const stray = attributes.filter((attribute) => !known.includes(attribute));
  const takes = ways
    .map(({ must, may }) => [...must, ...may.map((one) => `${one} (if you like)`)].join(', '))
    .join('; or ');
  const allowed = takes === '' ? 'it takes nothing' : `it takes ${takes}`;
  if (stray.length > 0)
    return `<${name}> takes no ${stray.map((one) => `"${one}"${didYouMean(one, known, 0)}`).join(', no ')}; ${allowed}`;
  const lacks = ways.map(({ must }) => must.filter((one) => !attributes.includes(one)));
  if (lacks.some(({ length }) => length === 0)) return '';
  const fewest = lacks.reduce((a, b) => (b.length < a.length ? b : a));
  return `<${name}> is without ${fewest.join(', ')}; ${allowed}`;
}
