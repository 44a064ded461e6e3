const SPELLED: Readonly<Record<string, string>> = {
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  six: '6',
  seven: '7',
  eight: '8',
  nine: '9',
  ten: '10',
  twelve: '12',
  fifteen: '15',
  twenty: '20',
  thirty: '30',
  forty: '40',
  fifty: '50',
  sixty: '60',
};
/** Longest first, so that "mm²" is not taken for "mm". */
const UNITS = [
  'turns a minute|turns?|steps?|pulses?|teeth|counts?|times',
  'evenings?|days?|weeks?|months?|years?|hours?|minutes?|seconds?|ms|h|s',
  'mm²|mm/min|mm|µm|km|m²|m|metres?|Nm|N·m|N/mm²|kN|N',
  'mV|V|volts?|mA|A|amperes?|kW|W|watts?|kHz|MHz|Hz|ohms?|mH|kg|g|°C|°|degrees?|%|of 20',
].join('|');
const NUMBER = `(?:\\d[\\d,]*(?:\\.\\d+)?|${Object.keys(SPELLED)
  .map((word) => `[${word[0]!.toUpperCase()}${word[0]}]${word.slice(1)}`)
  .join('|')})`;
const QUANTITY = new RegExp(
  `(?<![\\w.])(${NUMBER}(?:(?:,| to| and| or| by| ×|–)\\s*${NUMBER})*)\\s+(${UNITS})(?![\\w²/])`,
  'g',
);
const SHARE =
  /\b(?:(?:one|two|three|four|five|six|seven|eight|nine|a) (?:thirds?|quarters?|fifths?|tenths?)|half (?:of|the)|(?:by|a) half)\b/gi;

const plain = (number: string): string => SPELLED[number.toLowerCase()] ?? number.replace(/,$/, '');
const singular = (unit: string): string => (/^[a-z]{3,}s$/.test(unit) ? unit.slice(0, -1) : unit);

/** The numbers with a unit in a text, each by itself: "0.01 or 0.02 mm" gives "0.01 mm" and "0.02 mm"; then the shares in words. */
export function quantitiesIn(text: string): string[] {
  const flat = text.replace(/[*_`]/g, '').replace(/\s+/g, ' ');
  const measured = [...flat.matchAll(QUANTITY)].flatMap(([, numbers, unit]) =>
    (numbers!.match(new RegExp(NUMBER, 'g')) ?? []).map((each) => `${plain(each)} ${singular(unit!)}`),
  );
  return [...measured, ...[...flat.matchAll(SHARE)].map(([share]) => share.toLowerCase())];
}
