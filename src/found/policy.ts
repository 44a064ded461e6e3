import { createHash } from 'node:crypto';
import { type BuiltPage, plainText } from './built-page.ts';
import { ELSEWHERE, faultsSaid } from './faults.ts';

const POLICY = /<meta http-equiv="content-security-policy" content="([^"]*)"\s*\/?>/i;
const INLINE = /<(script|style)((?:"[^"]*"|'[^']*'|[^>"'])*)>([\s\S]*?)<\/\1>/gi;
const TAG = /<([a-z][\w-]*)((?:"[^"]*"|'[^']*'|[^>"'])*)>/gi;
const ATTRIBUTE = /(?:^|\s)([^\s=>"']+)\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+))/g;
/** Blocks of data in a script element are never run. */
const DATA = /\stype=["']?(?:application|text)\/(?:json|ld\+json|plain)/i;
/** What a link element has the browser fetch; a canonical or alternate address is only named. */
const FETCHED = /\b(?:stylesheet|icon|manifest|preload|modulepreload|prefetch|preconnect|dns-prefetch)\b/i;

/** Directives without which a policy leaves a door open, as the policy has to write them. */
const WANTED = ["default-src 'none'", "object-src 'none'", "base-uri 'none'", "form-action 'none'"];

/** What a page breaks of the rule that it runs and fetches only its own. */
export interface PolicyFault {
  readonly page: string;
  readonly says: string;
}

/** The content policy that a page carries, as its directives; undefined where it carries none. */
export function policyOf(html: string): string | undefined {
  const content = POLICY.exec(html)?.[1];
  return content === undefined ? undefined : directives(plainText(content)).join('; ');
}

/**
 * The page with its policy put before everything that it guards: the builder writes it at the end of the head. The
 * encoding stays first, as it has to stand within the first 1,024 bytes.
 */
export function policyFirst(html: string): string {
  const policy = POLICY.exec(html)?.[0];
  if (policy === undefined) return html;
  return html
    .replace(policy, '')
    .replace(/<head>(?:<meta charset="utf-8"\s*\/?>)?/i, (head) => head + policy);
}

const directives = (policy: string): string[] =>
  policy
    .split(';')
    .map((each) => each.trim())
    .filter((each) => each !== '');

/** What a directive may name: nothing, the site's own files, a hash, or data that the page holds already. */
const OWN = /^(?:'none'|'self'|'sha256-[A-Za-z0-9+/=]+'|data:|blob:)$/;

function looseSources(policy: string): string[] {
  const all = directives(policy);
  const missing = WANTED.filter((each) => !all.includes(each));
  const loose = all.flatMap((each) => each.split(/\s+/).slice(1)).filter((source) => !OWN.test(source));
  return [
    ...missing.map((each) => `the policy lacks ${each}`),
    ...loose.map((each) => `the policy allows ${each}`),
  ];
}

const hashOf = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** Scripts and styles written into the page that its policy does not know by their hash. */
function unknownInline(html: string, policy: string): string[] {
  return [...html.matchAll(INLINE)].flatMap(([, name = '', attributes = '', text = '']) => {
    if (text === '' || DATA.test(attributes)) return [];
    const known = directives(policy).find((each) => each.startsWith(`${name.toLowerCase()}-src `));
    return known?.includes(hashOf(text))
      ? []
      : [`<${name}> that the policy does not know: ${text.trim().slice(0, 60)}`];
  });
}

function attributesOf(written: string): Map<string, string> {
  const all = [...written.matchAll(ATTRIBUTE)];
  return new Map(all.map(([, name = '', a, b, c]) => [name.toLowerCase(), plainText(a ?? b ?? c ?? '')]));
}

/** The addresses that a browser fetches by itself for an element. */
function fetched(tag: string, attributes: ReadonlyMap<string, string>): string[] {
  const of = (...names: string[]) => names.flatMap((name) => attributes.get(name) ?? []);
  if (tag === 'link') return FETCHED.test(attributes.get('rel') ?? '') ? of('href') : [];
  if (tag === 'a' || tag === 'area') return of('ping');
  const sets = of('srcset', 'imagesrcset').flatMap((set) => set.split(',').map((each) => each.trim()));
  return [...of('src', 'poster', 'data', 'action', 'formaction', 'background'), ...sets];
}

/** What an element says that the policy refuses, or that would ask another place on the web. */
function elementFaults(tag: string, written: string): string[] {
  const attributes = attributesOf(written);
  const names = [...attributes.keys()].filter((name) => name === 'style' || /^on[a-z]/.test(name));
  const foreign = fetched(tag, attributes).filter(
    (url) => ELSEWHERE.test(url) && !url.startsWith('data:image/'),
  );
  const scripted = [...attributes.values()].filter((value) => /^\s*javascript:/i.test(value));
  return [
    ...names.map((name) => `<${tag}> has ${name}=, which the policy refuses`),
    ...[...foreign, ...scripted].map((url) => `<${tag}> leads to ${url.slice(0, 80)}`),
  ];
}

function faultsOf(html: string): string[] {
  const policy = policyOf(html);
  if (policy === undefined) return ['no content policy'];
  const before = html.slice(0, html.search(POLICY));
  const late = /<(?:script|style|link)\b/i.test(before)
    ? ['the policy stands behind what it is to guard']
    : [];
  // What stands inside scripts and styles is no element.
  const elements = [...html.replaceAll(INLINE, '<$1$2></$1>').matchAll(TAG)];
  const inside = elements.flatMap(([, tag = '', written = '']) => elementFaults(tag.toLowerCase(), written));
  return [...late, ...looseSources(policy), ...unknownInline(html, policy), ...inside];
}

/** Everything on the built pages that is not their own, or that their own policy refuses. One policy holds for all. */
export function policyFaults(pages: readonly BuiltPage[]): PolicyFault[] {
  const common = pages[0] && policyOf(pages[0].html);
  return pages.flatMap(({ page, html }) => {
    const other = policyOf(html) === common ? [] : ['its policy is not that of the first page'];
    return [...new Set([...other, ...faultsOf(html)])].map((says) => ({ page, says }));
  });
}

/** Addresses that a style sheet would fetch from elsewhere. */
export function foreignInStyles(css: string): string[] {
  const urls = [...css.matchAll(/(?:url\(\s*|@import\s+)["']?([^"')\s;]+)/gi)].map(([, url = '']) => url);
  return urls.filter((url) => ELSEWHERE.test(url) && !/^data:(?:image|font)\//.test(url));
}

/** What is said when a build ends for what the policy refuses. */
export const policyFaultsSaid = (faults: readonly PolicyFault[]): string =>
  faultsSaid(
    "Not the site's own, or refused by its policy",
    faults.map(({ page, says }) => `${page || 'the first page'}: ${says}`),
  );
