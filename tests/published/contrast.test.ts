import { expect, test } from 'vitest';
import { contrast, luminance } from '../look/luminance.ts';

/**
 * W3C, Web Content Accessibility Guidelines 2.2, definitions of contrast ratio and relative luminance: black
 * and white are the ends of the scale, 1 to 21.
 */
test('black and white are the ends of the scale', () => {
  expect(luminance('#000')).toBe(0);
  expect(luminance('#fff')).toBeCloseTo(1, 12);
  expect(contrast('#fff', '#000')).toBeCloseTo(21, 12);
  expect(contrast('#fff', '#ffffff')).toBe(1);
});

/**
 * Ratios as printed in "Color contrasts" (ecss.tomgdow.com/html/color_contrasts.html), which cuts the third
 * decimal of some and rounds others: the printed figure is held to one of its last place.
 */
test.each([
  ['#ffff00', '#ffffff', 1.07],
  ['#00ffff', '#ffffff', 1.25],
  ['#00ff00', '#ffffff', 1.4, 0.1],
  ['#ff00ff', '#ffffff', 3.13],
  ['#ff0000', '#ffffff', 4],
  ['#0000ff', '#ffffff', 8.6],
  ['#0000ff', '#000000', 2.44],
  ['#ff0000', '#000000', 5.25],
  ['#ffff00', '#000000', 19.55],
])('%s on %s is %f', (colour, ground, printed, place = 0.01) => {
  expect(Math.abs(contrast(colour, ground) - printed)).toBeLessThan(place);
});

/** #777777 on white is 4.48 and must not be rounded up to 4.5 (davidmacd.com/test/check-color.html). */
test('a grey just too light for words stays too light', () => {
  expect(contrast('#777777', '#fff')).toBeCloseTo(4.48, 2);
});
