import { plainText } from './built-page.ts';
import type { Look } from './look.ts';
import { letters } from './pen.ts';

const SVG = /<svg class="drawing topic-drawing"[^>]*viewBox="0 0 360 (\d+)"[^>]*>([\s\S]*?)<\/svg>/;

const attribute = (tag: string, name: string): string | undefined =>
  new RegExp(`\\b${name}="([^"]*)"`).exec(tag)?.[1];

/** What src/styles/book.css gives the lines of a drawing. */
const styleOf = (look: Look): string => `
  .d-part{fill:${look.paper};stroke:${look.ink};stroke-width:1.5}
  .d-line{fill:none;stroke:${look.ink};stroke-width:1.5}
  .d-fine{fill:none;stroke:${look.ink};stroke-width:.8}
  .d-wash{fill:${look.wash};stroke:${look.ink};stroke-width:1.5}
  .d-cut{stroke:${look.ink};stroke-width:1.5}
  .d-axis{fill:none;stroke:${look.blue};stroke-width:1;stroke-dasharray:10 3 2 3}
  .d-hidden{fill:none;stroke:${look.ink};stroke-width:.9;stroke-dasharray:4 3}
  .d-push{fill:none;stroke:${look.blue};stroke-width:2.2}
  .d-dim{fill:none;stroke:${look.ink};stroke-width:1}
  .hatch-ink{stroke:${look.ink}}
  .leader{stroke:${look.ink};stroke-width:1;fill:none}
  .leader-halo{stroke:${look.paper};stroke-width:4.5;fill:none}
  .leader-dot{fill:${look.ink}}
  .balloon{fill:${look.paper};stroke:${look.ink};stroke-width:1.3}
  .axis-line{stroke:${look.ink};stroke-width:1.3;fill:none}`;

/** A word of the drawing in letters that need no font of the machine. */
function lettered(tag: string, text: string, look: Look): string {
  const size = Number(attribute(tag, 'font-size') ?? 12);
  const anchor = /callout-number/.test(tag) ? 'middle' : (attribute(tag, 'text-anchor') ?? 'start');
  return letters(text, {
    x: Number(attribute(tag, 'x')),
    y: Number(attribute(tag, 'y')),
    size: size * 0.68,
    colour: look.ink,
    pen: 0.95,
    anchor: anchor as 'start' | 'middle' | 'end',
  });
}

/** The drawing of a built topic page, 360 units wide, or undefined where the page has none. */
export function topicDrawing(html: string, look: Look): { height: number; svg: string } | undefined {
  const [, height, inside] = SVG.exec(html) ?? [];
  if (!height || !inside) return undefined;
  const bare = inside
    .replace(/<title[\s\S]*?<\/title>|<desc[\s\S]*?<\/desc>/g, '')
    .replace(/<text([^>]*)>([^<]*)<\/text>/g, (_, tag, text) => lettered(tag, plainText(text.trim()), look));
  return { height: Number(height), svg: `<style>${styleOf(look)}</style>${bare}` };
}
