/** Reads the head of a topic page: `key: "text"`, `key: 3`, `key: word`, `key: [a, b]`, and lists of `- "text"`. */
export function readHead(head: string): Record<string, unknown> {
  const found: Record<string, unknown> = {};
  let last = '';
  for (const line of head.split('\n').filter((each) => each.trim())) {
    const [, item] = /^ {2}- (.+)$/.exec(line) ?? [];
    const [, key, value = ''] = /^([a-z]+):\s*(.*)$/.exec(line) ?? [];
    if (!item && !key) throw new Error(`Cannot read this line of the head: ${line}`);
    if (item) (found[last] as unknown[]).push(readValue(item));
    if (key) found[key] = value ? readValue(value) : [];
    last = key ?? last;
  }
  return found;
}

function readValue(text: string): unknown {
  if (text.startsWith('"') || /^\d+$/.test(text)) return JSON.parse(text);
  const [, list] = /^\[(.*)\]$/.exec(text) ?? [];
  if (list === undefined) return text;
  return list
    .split(',')
    .map((each) => each.trim())
    .filter(Boolean);
}
