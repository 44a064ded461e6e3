// The first use of a word of the trade in a page becomes a link, and nothing else of the page changes.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { glossHtml } from '../../../src/components/book/gloss-html.ts';

const glossed = (html: string) => glossHtml(html, (word) => `/in/words/#${word.replaceAll(' ', '-')}`);
const link = (text: string, word = text) =>
  `<a class="gloss" href="/in/words/#${word.replaceAll(' ', '-')}" data-keep-path>${text}</a>`;

test.each([
  ['in a paragraph', '<p>A servo.</p>', `<p>A ${link('servo')}.</p>`],
  [
    'in bold, once a page',
    '<p><b>Gibs</b> and a gib.</p><p>Gib</p>',
    `<p><b>${link('Gibs', 'gib')}</b> and a gib.</p><p>Gib</p>`,
  ],
  [
    'in a list after a line break',
    '<ul><li>One<br>relay</li></ul>',
    `<ul><li>One<br>${link('relay')}</li></ul>`,
  ],
  [
    'after a heading that says it',
    '<h2 id="a">Servo</h2><p>Servo</p>',
    `<h2 id="a">Servo</h2><p>${link('Servo', 'servo')}</p>`,
  ],
  [
    'after a figure',
    '<figure><svg><path/><text>relay</text></svg></figure>relay',
    `<figure><svg><path/><text>relay</text></svg></figure>${link('relay')}`,
  ],
  [
    'after a working figure',
    '<section class="working"><p>gib <b>gib</b></p>gib</section>gib',
    `<section class="working"><p>gib <b>gib</b></p>gib</section>${link('gib')}`,
  ],
])('%s', (_, html, expected) => {
  expect(glossed(html)).toBe(expected);
});

test.each([
  ['a link', '<p><a href="x/">The <b>servo</b></a></p>'],
  ['code', '<pre><code>servo</code></pre>'],
  [
    'what a script draws',
    '<astro-island props="{&quot;a&quot;:[0,&quot;gib>&quot;]}"><p>servo</p></astro-island>',
  ],
  ['an attribute', '<p title="servo > relay">x</p><img alt="gib"><!-- relay -->'],
  ['a script', '<script>const servo = 1 < 2;</script>'],
])('%s is left as it is', (_, html) => {
  expect(glossed(html)).toBe(html);
});

test('without its links a page is what it was', () => {
  const piece = fc.constantFrom(
    '<p>',
    '</p>',
    '<br/>',
    '<h3 id="x">',
    '</h3>',
    '<a href="y">',
    '</a>',
    'servo',
    ' ',
    'ball screw',
    '&amp;',
    '<',
    '>',
  );
  const without = (html: string) => html.replace(/<a class="gloss"[^>]*>([^<]*)<\/a>/g, '$1');
  fc.assert(
    fc.property(fc.array(piece), (pieces) => {
      expect(without(glossed(pieces.join('')))).toBe(pieces.join(''));
    }),
  );
});
