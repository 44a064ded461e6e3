/** A script as it stands in the head of every page: without remarks of its own and without indentation. */
export const inHead = (script: string): string =>
  script
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '' && !line.startsWith('//'))
    .join('\n');
