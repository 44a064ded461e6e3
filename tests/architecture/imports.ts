import { posix } from 'node:path';
import ts from 'typescript';
import { IMPURE, LODGERS, MAY_IMPORT, PACKAGES_FOR_CALC, RUN_BY_NODE } from './rooms.ts';

/** A source file: its path below src, with forward slashes, and its text. */
export type Source = { path: string; text: string };

/** The room a path below src belongs to, or undefined when it stands in none. */
export function roomOf(path: string): string | undefined {
  const bare = path.replace(/\.(tsx?|astro)$/, '');
  const rooms = Object.keys(MAY_IMPORT);
  return LODGERS[bare] ?? rooms.find((room) => bare === room || bare.startsWith(`${room}/`));
}

function scriptOf({ path, text }: Source): string {
  if (!path.endsWith('.astro')) return text;
  const fenced = /^---\r?\n([\s\S]*?)^---/m.exec(text)?.[1] ?? '';
  const scripts = [...text.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)].map((match) => match[1]);
  return [fenced, ...scripts].join('\n');
}

/** Every module a file names: imports, type imports, re-exports and dynamic imports. */
export function importsOf(source: Source): string[] {
  return ts.preProcessFile(scriptOf(source), true, true).importedFiles.map(({ fileName }) => fileName);
}

function relativeFault({ path }: Source, name: string): string | undefined {
  const from = roomOf(path);
  const target = posix.join(posix.dirname(path), name.replace(/\?.*$/, ''));
  const to = roomOf(target);
  if (RUN_BY_NODE.test(path) && !/\.(ts|json)$/.test(name))
    return `${path}: '${name}' lacks its file extension`;
  if (from === undefined || from === to) return undefined;
  if (to !== undefined && MAY_IMPORT[from]?.includes(to)) return undefined;
  return `${path}: ${from} must not import ${to ?? target}`;
}

function importFault(source: Source, name: string): string | undefined {
  if (name.startsWith('.')) return relativeFault(source, name);
  if (/^[~@]?\/|^src\//.test(name)) return `${source.path}: '${name}' should be a relative import`;
  const foreign = source.path.startsWith('calc/') && !PACKAGES_FOR_CALC.includes(name);
  return foreign ? `${source.path}: calc must not import the package ${name}` : undefined;
}

function impurities({ path, text }: Source): string[] {
  if (!path.startsWith('calc/')) return [];
  const code = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
  const found = Object.entries(IMPURE).filter(([, pattern]) => pattern.test(code));
  return found.map(([what]) => `${path}: calc must not depend on ${what}`);
}

/** One sentence for each thing in these files that breaks the house rules; empty when all is well. */
export function faultsOf(sources: readonly Source[]): string[] {
  return sources.flatMap((source) => {
    const homeless = roomOf(source.path)
      ? []
      : [`${source.path} is in no room of tests/architecture/rooms.ts`];
    const imports = importsOf(source).map((name) => importFault(source, name));
    return [...homeless, ...imports.filter((fault) => fault !== undefined), ...impurities(source)];
  });
}
