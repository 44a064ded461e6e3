/**
 * A strict little reader of iCalendar, written from RFC 5545 for the tests alone: it takes nothing for granted that the
 * writer does. Throws with the rule that is broken.
 */
export interface Component {
  readonly name: string;
  readonly properties: readonly Property[];
  readonly components: readonly Component[];
}

export interface Property {
  readonly name: string;
  readonly params: Readonly<Record<string, string>>;
  /** As written, escapes and all. */
  readonly value: string;
}

/** 3.1: lines end with CRLF, none is longer than 75 octets, folded ones begin with a space or a tab. */
export function contentLines(file: string): string[] {
  if (!file.endsWith('\r\n')) throw new Error('3.1: the last line does not end with CRLF');
  const raw = file.slice(0, -2).split('\r\n');
  for (const line of raw) {
    if (/[\r\n]/.test(line)) throw new Error(`3.1: a bare line break in “${line}”`);
    const size = Buffer.byteLength(line, 'utf8');
    if (size > 75) throw new Error(`3.1: ${size} octets in “${line}”`);
    if (line === '') throw new Error('3.1: an empty line');
  }
  const bytes = Buffer.from(file.slice(0, -2).replace(/\r\n[ \t]/g, ''), 'utf8');
  return new TextDecoder('utf-8', { fatal: true }).decode(bytes).split('\r\n');
}

function property(line: string): Property {
  const match = /^([A-Z0-9-]+)((?:;[A-Z0-9-]+=[^";:,]+)*):(.*)$/s.exec(line);
  if (!match) throw new Error(`3.1: no content line: “${line}”`);
  const params = Object.fromEntries(
    match[2]!
      .split(';')
      .filter(Boolean)
      .map((param) => param.split('=') as [string, string]),
  );
  return { name: match[1]!, params, value: match[3]! };
}

/** 3.3.11: a text value without its escapes. */
export function text(value: string): string {
  if (/(^|[^\\])(\\\\)*\\([^\\;,nN]|$)/.test(value))
    throw new Error(`3.3.11: a stray backslash in “${value}”`);
  if (/(^|[^\\])(\\\\)*[;,]/.test(value)) throw new Error(`3.3.11: a bare comma or semicolon in “${value}”`);
  return value.replace(/\\([\\;,nN])/g, (_, kept: string) => (/n/i.test(kept) ? '\n' : kept));
}

/** 3.3.4: YYYYMMDD, a day that exists. */
export function date(value: string): string {
  const day = value.replace(/^(\d{4})(\d{2})(\d{2})$/, '$1-$2-$3');
  if (day === value || new Date(`${day}T00:00:00Z`).toISOString().slice(0, 10) !== day)
    throw new Error(`3.3.4: no day: ${value}`);
  return day;
}

/** The one component of a file, with those inside it. */
export function parse(file: string): Component {
  const open: { name: string; properties: Property[]; components: Component[] }[] = [];
  let whole: Component | undefined;
  for (const each of contentLines(file).map(property)) {
    if (whole) throw new Error('3.4: something after the end');
    if (each.name === 'BEGIN') open.push({ name: each.value, properties: [], components: [] });
    else if (each.name === 'END') {
      const closed = open.pop();
      if (closed?.name !== each.value) throw new Error(`3.6: END:${each.value} closes ${closed?.name}`);
      const parent = open.at(-1);
      if (parent) parent.components.push(closed);
      else whole = closed;
    } else open.at(-1)!.properties.push(each);
  }
  if (!whole) throw new Error('3.4: not closed');
  return whole;
}

/** 3.6: the values of a property that may stand once; throws where it stands twice. */
export function once({ name: of, properties }: Component, name: string): Property | undefined {
  const found = properties.filter((each) => each.name === name);
  if (found.length > 1) throw new Error(`3.6: ${name} twice in ${of}`);
  return found[0];
}
