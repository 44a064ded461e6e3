/** The line at the head of every printed page. Browsers without page-margin boxes print it once, on the first sheet. */

const quoted = (text: string): string => `"${text.replaceAll('\\', '\\\\').replaceAll('"', '\\"')}"`;

const rules = (line: string): string => `@page {
  @top-left { content: ${quoted(line)}; font: 9pt sans-serif; padding-inline-start: 13mm; text-align: start; white-space: nowrap; }
}`;

let sheet: CSSStyleSheet | undefined;

/** Puts a line at the head of each printed page; true where this browser can. */
export function setRunningHeader(line: string): boolean {
  if (!('adoptedStyleSheets' in document)) return false;
  if (!sheet) {
    sheet = new CSSStyleSheet();
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  }
  sheet.replaceSync(rules(line));
  return sheet.cssRules[0]?.cssText.includes('top-left') === true;
}
