import { describe, expect, test } from 'vitest';
import { headTags, inShort, pageAt, pictureFile } from '../../src/found/addresses.ts';

const page = { title: 'Plan', description: 'The plan of a conversion.' };
const valuesOf = (address: Parameters<typeof headTags>[1]) =>
  Object.fromEntries(
    headTags(page, address).map(({ attributes: { property, name, rel, content, href } }) => [
      property ?? name ?? rel,
      content ?? href,
    ]),
  );

describe('what a page says of itself', () => {
  test('with the address of the site: canonical link, picture and card, below the base', () => {
    const said = valuesOf({ site: new URL('https://example.org'), base: '/shop', pathname: '/shop/plan/' });
    expect(said).toMatchObject({
      canonical: 'https://example.org/shop/plan/',
      'og:url': 'https://example.org/shop/plan/',
      'og:image': 'https://example.org/shop/pictures/plan.png',
      'og:title': 'Plan',
      'og:type': 'website',
      'twitter:card': 'summary_large_image',
    });
  });

  test('without it: title and description, and no address at all', () => {
    const said = valuesOf({ site: undefined, base: '/', pathname: '/plan/' });
    expect(said).toMatchObject({ 'og:title': 'Plan', 'og:description': page.description });
    expect(Object.values(said).filter((value) => /https?:|\//.test(value ?? ''))).toEqual([]);
    expect(said).not.toHaveProperty('canonical');
  });

  test.each([
    ['/', '/', '', 'pictures/home.png'],
    ['/questions/control/', '/', 'questions/control/', 'pictures/questions/control.png'],
    ['/a/b/plan/', '/a/b', 'plan/', 'pictures/plan.png'],
  ])('%s below %s is the page “%s” with the picture %s', (pathname, base, at, file) => {
    expect(pageAt(pathname, base)).toBe(at);
    expect(pictureFile(at)).toBe(file);
  });
});

describe('a description in a list of results', () => {
  test('keeps the whole sentences that fit', () => {
    const long = `${'a'.repeat(99)}? ${'B'.repeat(58)}. ${'C'.repeat(3)}.`;
    expect(inShort(long)).toBe(`${'a'.repeat(99)}? ${'B'.repeat(58)}.`);
    expect(inShort(`${'a'.repeat(99)}? ${'B'.repeat(60)}. C.`)).toBe(`${'a'.repeat(99)}?`);
  });

  test('leaves a point inside a figure alone', () => {
    expect(inShort('A gap of 0.05 mm near the chuck. It matters.')).toBe(
      'A gap of 0.05 mm near the chuck. It matters.',
    );
  });
});
