export const openPages: ReadonlySet<string> = new Set();
