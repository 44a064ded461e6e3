/** An address of another place on the web, of mail, or of data. */
export const ELSEWHERE = /^(?:[a-z][a-z0-9+.-]*:|\/\/)/i;

const SHOWN = 50;

/** What is said when a build ends for faults of its pages, a line each; after fifty it only counts. */
export function faultsSaid(head: string, lines: readonly string[]): string {
  const more = lines.length > SHOWN ? [`and ${lines.length - SHOWN} more`] : [];
  return [`${head}: ${lines.length}`, ...[...lines.slice(0, SHOWN), ...more].map((line) => `  ${line}`)].join(
    '\n',
  );
}
