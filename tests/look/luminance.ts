/** Share of full light (0 to 1) of one channel of an sRGB colour, 0 to 255. */
const light = (channel: number): number => {
  const part = channel / 255;
  return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
};

/** The three channels of `#rgb` or `#rrggbb`, 0 to 255. */
const channels = (colour: string): number[] => {
  const digits = /^#([0-9a-f]{3}|[0-9a-f]{6})$/i.exec(colour)?.[1];
  if (!digits) throw new Error(`${colour} is no colour`);
  const wide = digits.length === 3 ? digits.replace(/./g, '$&$&') : digits;
  return [0, 2, 4].map((at) => Number.parseInt(wide.slice(at, at + 2), 16));
};

/** Relative luminance, 0 (black) to 1 (white): WCAG 2.2, definition of that name. */
export const luminance = (colour: string): number => {
  const [red = 0, green = 0, blue = 0] = channels(colour).map(light);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};

/** Contrast ratio of two colours, 1 to 21: WCAG 2.2, definition of that name. */
export const contrast = (one: string, other: string): number => {
  const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return (lighter + 0.05) / (darker + 0.05);
};
