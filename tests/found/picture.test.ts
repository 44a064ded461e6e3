import { createHash } from 'node:crypto';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { figureWords } from '../../src/components/starting/figures.ts';
import { ownerById, startingPoint } from '../../src/components/starting/points.ts';
import { aboutPage } from '../../src/found/about.ts';
import { lookOf } from '../../src/found/look.ts';
import { pictureSvg } from '../../src/found/picture.ts';
import { pngOf } from '../../src/found/png.ts';

const look = lookOf(join(import.meta.dirname, '..', '..'));
const topic = `<svg class="drawing topic-drawing" role="img" viewBox="0 0 360 200"><title>Not drawn</title><path class="d-part" d="M0 0h9"></path><text x="40" y="20" font-size="11">push</text></svg>`;
const built = (page: string, title: string) => ({
  page,
  title: `${title} – Halfnut`,
  description: 'What this page is for.',
  listed: true,
  html: page.includes('topics') ? topic : '',
});
const svgOf = (page: string, title: string): string => {
  const { drawing, ...text } = aboutPage(built(page, title), look);
  return pictureSvg(text, drawing, look);
};
const hash = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');

const PAGES: [page: string, title: string][] = [
  ['', 'Halfnut'],
  ['questions/control/', 'Control'],
  ['book/spindle/', 'Spindle'],
  ['book/topics/drilling/', 'Drilling – The book'],
  ['starting-points/brass-by-the-dozen/', 'Brass by the dozen'],
  ['prices/2026-12/', 'Prices of edition 2026-12'],
  ['shelf/', 'A page without figures of its own'],
];

describe.each(PAGES)('the picture of “%s”', (page, title) => {
  const svg = svgOf(page, title);

  test('is 1200 by 630 and the same bytes when it is made again', async () => {
    const [png, again] = [await pngOf(svg), await pngOf(svgOf(page, title))];
    expect(await sharp(png).metadata()).toMatchObject({ format: 'png', width: 1200, height: 630 });
    expect(hash(again)).toBe(hash(png));
    expect(png.length).toBeLessThan(40_000);
  });

  test('needs no font, no file and no colour that was not in the tokens', () => {
    expect(svg).not.toMatch(/<text|font-|href|undefined|NaN/);
    const colours = new Set(svg.match(/#[0-9a-f]{3,6}\b/g));
    expect([...colours].filter((colour) => !Object.values(look).includes(colour))).toEqual([]);
  });
});

test('names real figures: those of the page', () => {
  const { report } = startingPoint(ownerById('brass-by-the-dozen'));
  const { money, hours, weeks } = figureWords(report);
  const about = aboutPage(built('starting-points/brass-by-the-dozen/', 'x'), look);
  expect(about.figures.map(({ value }) => value)).toEqual([money, hours, weeks]);
  expect(aboutPage(built('prices/2026-11/', 'x'), look).figures[0]?.value).toMatch(/^\d{4}-\d\d-\d\d$/);
  expect(aboutPage(built('questions/control/', 'x'), look).heading).toMatch(/\?$/);
});
