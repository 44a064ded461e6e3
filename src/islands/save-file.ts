/** Kinds of files that this site writes. */
export const fileTypes = {
  csv: 'text/csv;charset=utf-8',
  json: 'application/json',
  text: 'text/plain;charset=utf-8',
  calendar: 'text/calendar;charset=utf-8',
} as const;

/** Hands the browser a file to save under this name. */
export function saveFile(name: string, content: Blob | string, type: string = fileTypes.text): void {
  const blob = typeof content === 'string' ? new Blob([content], { type }) : content;
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // The browser reads the file after the click; a minute later it has.
  window.setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
