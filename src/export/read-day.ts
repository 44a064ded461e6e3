/** A day of a file as ISO 8601, or why it cannot be read. 03.04.2026 is day first; 03/04/2026 could be either and is a fault. */
export function readDay(cell: string): { readonly day?: string; readonly fault?: string } {
  const text = cell.trim().replace(/[T ]\d{1,2}:\d{2}.*$/, '');
  const shown = `“${cell.trim().slice(0, 30)}”`;
  const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(text);
  if (yearFirst) return dayOf(yearFirst[1]!, yearFirst[2]!, yearFirst[3]!, shown);
  const yearLast = /^(\d{1,2})([./-])(\d{1,2})[./-](\d{4})$/.exec(text);
  if (!yearLast) return { fault: `${shown} is not a day` };
  const [, first = '', mark, second = '', year = ''] = yearLast;
  if (mark === '.' || Number(first) > 12 || first === second) return dayOf(year, second, first, shown);
  if (Number(second) > 12) return dayOf(year, first, second, shown);
  return { fault: `${shown} could be day or month first` };
}

function dayOf(year: string, month: string, day: string, shown: string): { day?: string; fault?: string } {
  const iso = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  const date = new Date(`${iso}T00:00:00Z`);
  const real = !Number.isNaN(date.getTime()) && date.toISOString().startsWith(iso);
  return real ? { day: iso } : { fault: `${shown} is not a day` };
}
