/** Width of a line of text in px, judged without a screen: near enough to decide where it fits. */
export function textWidth(text: string, size = 12): number {
  return text.length * size * 0.54;
}

const CORE = /^(\D*?)([−-]?\d.*\d|[−-]?\d)(\D*)$/;

/**
 * Two figures as one range with an en dash and the unit said once: "$4,400–5,600", "240–300 h".
 * Equal figures give one. Figures whose units differ are both written out.
 */
export function spanText(from: string, to: string): string {
  if (from === to) return from;
  const a = CORE.exec(from);
  const b = CORE.exec(to);
  if (!a || !b || a[1] !== b[1] || a[3] !== b[3]) return `${from} – ${to}`;
  return `${a[1]}${a[2]}–${b[2]}${b[3]}`;
}
