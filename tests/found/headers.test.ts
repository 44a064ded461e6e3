// Header names and values: W3C CSP Level 3, Permissions Policy; RFC 9111 section 5.2.2, RFC 8246 (immutable); WHATWG HTML
// (cross-origin opener policy) and Fetch (nosniff).
import { describe, expect, test } from 'vitest';
import { apacheHeaders, caddySite, headersOf, nginxServer, plainHeaders } from '../../src/found/headers.ts';

const policy = "default-src 'none'; script-src 'self' 'sha256-a+b/c='";
const headers = headersOf(policy);
const files = { plainHeaders, apacheHeaders, nginxServer, caddySite };

test('the header has the policy of the pages, and that nobody may frame them', () => {
  expect(Object.fromEntries(headers)).toMatchObject({
    'Content-Security-Policy': `${policy}; frame-ancestors 'none'`,
    'X-Content-Type-Options': 'nosniff',
    'Permissions-Policy': expect.stringMatching(/^camera=\(\), .*usb=\(\)$/),
  });
});

test('no value breaks out of its quotation marks or its line', () => {
  for (const [, value] of headers) expect(value).not.toMatch(/["\\\n$]/);
});

describe.each(Object.entries(files))('%s', (_, write) => {
  test.each(['/', '/shop/'])('below %s: every header, and what is kept for ever', (base) => {
    const text = write(headers, base);
    for (const [name, value] of headers)
      expect(text).toMatch(new RegExp(`\\b${name}:? "?${literal(value)}"?`));
    const [before, behind] = text.split('immutable');
    expect(text).toContain(`${base}_astro/`);
    expect(text).not.toContain('//_astro');
    expect(before + behind!).toContain('no-cache');
    const opened = [...text].filter((sign) => sign === '{').length;
    expect([...text].filter((sign) => sign === '}')).toHaveLength(opened);
  });
});

const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
