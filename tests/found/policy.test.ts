// What a built page runs and fetches is its own, and its policy says so. Directives and sources: W3C Content Security
// Policy Level 3; the hash of the empty text is that of FIPS 180-4 in base64.
import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { readBuilt } from '../../src/found/built-page.ts';
import {
  foreignInStyles,
  policyFaults,
  policyFaultsSaid,
  policyFirst,
  policyOf,
} from '../../src/found/policy.ts';

const hash = (text: string) => `sha256-${createHash('sha256').update(text).digest('base64')}`;
const RUN = 'start()';
const LOOK = 'p{margin:0}';
const GOOD = `default-src 'none'; object-src 'none'; img-src 'self' data:; worker-src 'self' blob:; base-uri 'none'; form-action 'none'; script-src 'self' '${hash(RUN)}'; style-src 'self' '${hash(LOOK)}'`;

const meta = (policy: string) => `<meta http-equiv="content-security-policy" content="${policy}">`;
const whole = (body: string, policy = GOOD) =>
  `<html><head><meta charset="utf-8">${meta(policy)}<link rel="stylesheet" href="/a.css"></head><body>${body}</body></html>`;
const faults = (...htmls: string[]) =>
  policyFaults(htmls.map((html, at) => readBuilt(at ? `p${at}/` : '', html))).map(
    ({ page, says }) => `${page}: ${says}`,
  );

describe('in order', () => {
  test.each([
    ['text only', '<p>x</p>'],
    ['a known script and a known style', `<script type="module">${RUN}</script><style>${LOOK}</style>`],
    ['data in a script element', '<script type="application/json">{"a":"<p onclick=x>"}</script>'],
    ['a script of its own', '<script type="module" src="/_astro/a.js"></script>'],
    ['a picture in the page', '<img src="data:image/svg+xml,x" alt="">'],
    ['a link that a reader may follow', '<a href="https://example.org/">there</a>'],
    ['its own address, named only', '<link rel="canonical" href="https://example.org/">'],
    ['words that look like handlers', '<p title="on = off">on = off</p><p data-on-x="1">style="a"</p>'],
  ])('%s', (_, body) => {
    expect(faults(whole(body))).toEqual([]);
  });

  test('entities in the policy are read as what they stand for', () => {
    expect(policyOf(meta('default-src &#39;none&#39;;img-src  data:;'))).toBe(
      "default-src 'none'; img-src  data:",
    );
  });
});

describe('not in order', () => {
  test.each([
    ['a handler', '<button onclick="x()">', /has onclick=/],
    ['a handler without quotes', '<svg onload=x()>', /has onload=/],
    ['a style on an element', '<p style="margin:0">', /has style=/],
    ['a script that is not known', '<script>other()</script>', /does not know: other\(\)/],
    ['a style that is not known', '<style>b{}</style>', /does not know: b\{\}/],
    ['a script of another place', '<script src="https://example.org/a.js"></script>', /leads to https/],
    ['a picture of another place', '<img src="//example.org/a.png">', /leads to \/\/example/],
    ['a set of pictures', '<img srcset="/a.png 1x, https://example.org/b.png 2x">', /leads to https/],
    [
      'a style sheet of another place',
      '<link href="https://example.org/a.css" rel="stylesheet">',
      /leads to https/,
    ],
    ['a connection made in advance', '<link rel="preconnect" href="https://example.org">', /leads to https/],
    ['a frame', '<iframe src="https://example.org"></iframe>', /leads to https/],
    ['a script as an address', '<a href="javascript:x()">', /leads to javascript:/],
    ['data that is no picture', '<object data="data:text/html,x"></object>', /leads to data:text/],
    ['a form that sends', '<form action="https://example.org">', /leads to https/],
    ['a ping', '<a href="/" ping="https://example.org">', /leads to https/],
  ])('%s', (_, body, says) => {
    const found = faults(whole(body));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(says);
  });

  test.each([
    ["'unsafe-inline'", `${GOOD} 'unsafe-inline'`],
    ["'unsafe-eval'", `${GOOD}; script-src-elem 'unsafe-eval'`],
    ['https:', GOOD.replace('data:', 'https:')],
    ['https://example.org', GOOD.replace('data:', 'https://example.org')],
    ['example.org', GOOD.replace('data:', 'example.org')],
    ['*', `${GOOD}; media-src *`],
  ])('a policy that allows %s', (source, policy) => {
    expect(faults(whole('', policy))).toEqual([`: the policy allows ${source}`]);
  });

  test.each(["default-src 'none'", "object-src 'none'", "base-uri 'none'", "form-action 'none'"])(
    'a policy without %s',
    (directive) => {
      expect(faults(whole('', GOOD.replace(directive, "media-src 'self'")))).toEqual([
        `: the policy lacks ${directive}`,
      ]);
    },
  );

  test('no policy, a late one, and one that only one page has', () => {
    expect(faults('<p>x</p>')).toEqual([': no content policy']);
    expect(faults(`<link rel="stylesheet" href="/a.css">${meta(GOOD)}`)[0]).toMatch(/stands behind/);
    expect(faults(whole(''), whole('', `${GOOD}; media-src 'self'`))).toEqual([
      'p1/: its policy is not that of the first page',
    ]);
  });
});

test('the policy is put in front, behind the encoding', () => {
  const html = `<html><head><meta charset="utf-8"><script>${RUN}</script>${meta(GOOD)}</head><body>$&</body></html>`;
  expect(faults(html)).toHaveLength(1);
  const moved = policyFirst(html);
  expect(moved.startsWith(`<html><head><meta charset="utf-8">${meta(GOOD)}<script>`)).toBe(true);
  expect(moved).toHaveLength(html.length);
  expect(faults(moved)).toEqual([]);
  expect(policyFirst(moved)).toBe(moved);
  expect(policyFirst('<p>x</p>')).toBe('<p>x</p>');
});

test('a style sheet fetches nothing from elsewhere', () => {
  const css = '@import "https://a.example/x.css";a{src:url(/f.woff2)}b{background:url("//b.example/i.png")}';
  expect(foreignInStyles(`${css}c{background:url(data:image/png;base64,x)}`)).toEqual([
    'https://a.example/x.css',
    '//b.example/i.png',
  ]);
});

test('the message names the first fifty and counts the rest', () => {
  const all = Array.from({ length: 52 }, (_, at) => ({ page: at ? 'a/' : '', says: `fault ${at}` }));
  const lines = policyFaultsSaid(all).split('\n');
  expect(lines.slice(0, 2)).toEqual([
    "Not the site's own, or refused by its policy: 52",
    '  the first page: fault 0',
  ]);
  expect(lines.at(-1)).toBe('  and 2 more');
});
