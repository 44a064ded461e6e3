/** Whether a fragment, with its "#" or without, holds a path: it begins with the version of its grammar. */
export const isPath = (fragment: string): boolean => /^#?\d+\?/.test(fragment);
