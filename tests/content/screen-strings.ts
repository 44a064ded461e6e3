import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

const source = join(import.meta.dirname, '..', '..', 'src');

/** Attributes whose strings no reader sees: names for styles, drawings and other elements. */
const UNSEEN =
  /^(class|className|d|transform|points|viewBox|id|for|key|href|role|type|media|style)$|^aria-(?!label$)/;

/** What a style sheet's way of naming elements is given to. */
const isSelecting = (node: ts.Node): boolean =>
  ts.isCallExpression(node) &&
  /\.(matches|closest|querySelector(All)?)(<.*>)?$/.test(node.expression.getText());

const isUnseen = (node: ts.Node): boolean =>
  isSelecting(node) ||
  ts.isImportDeclaration(node) ||
  ts.isExportDeclaration(node) ||
  ts.isLiteralTypeNode(node) ||
  (ts.isJsxAttribute(node) && UNSEEN.test(node.name.getText()));

/** Words of one piece of source as they are shown; what is put in at run time stands as "…". */
function shown(node: ts.Node): string | undefined {
  if (ts.isJsxText(node)) return node.text;
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return undefined;
  return [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join(' … ');
}

/** A string that is read has a space in it and a word of four small letters, and is no list of class names and no address. */
const isRead = (text: string): boolean =>
  /\s/.test(text) && /[a-z]{4}/.test(text) && !/^[a-z0-9 …:#.*>()-]*$|@/.test(text);

function stringsOf(file: string): string[] {
  const text = readFileSync(join(source, file), 'utf8');
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (isUnseen(node)) return;
    const words = shown(node)?.replace(/\s+/g, ' ').trim();
    if (words !== undefined && isRead(words)) found.push(words);
    ts.forEachChild(node, visit);
  };
  const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  visit(ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, kind));
  return found;
}

/** What the screens, messages and files say, by the file that says it. */
export const screenStrings: readonly { readonly file: string; readonly strings: readonly string[] }[] =
  globSync('{islands,export,link,calc/worth}/**/*.{ts,tsx}', { cwd: source })
    .toSorted()
    .map((file) => ({ file, strings: stringsOf(file) }))
    .filter(({ strings }) => strings.length > 0);
