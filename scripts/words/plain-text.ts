import { mdxToMdast } from 'satteri';

interface Node {
  readonly type: string;
  readonly value?: string;
  readonly children?: readonly Node[];
}

/** A section of a page: its heading, and its paragraphs and list items as plain text. */
export interface Section {
  readonly heading: string;
  readonly blocks: readonly string[];
}

const headOf = /^---\n[\s\S]*?\n---\n/;
const textOf = (node: Node): string =>
  node.value ?? (node.children ?? []).map(textOf).join(node.type === 'listItem' ? ' ' : '');

/** Paragraphs one by one, a list item as one piece; tables, pictures and pieces of the page are not read as prose. */
function blocksOf(node: Node): string[] {
  if (node.type === 'paragraph' || node.type === 'listItem')
    return [textOf(node).replace(/\s+/g, ' ').trim()];
  return ['root', 'list', 'blockquote'].includes(node.type) ? (node.children ?? []).flatMap(blocksOf) : [];
}

/** The sections under the headings of the second rank of a page in Markdown with pieces, its head left out. */
export function sectionsOf(page: string): Section[] {
  const found: { heading: string; blocks: string[] }[] = [];
  const tree = mdxToMdast(page.replace(headOf, '')) as Node;
  for (const node of tree.children ?? []) {
    if (node.type === 'heading') found.push({ heading: textOf(node), blocks: [] });
    else found.at(-1)?.blocks.push(...blocksOf(node));
  }
  return found;
}
