/** General libraries that ship no types. */
declare module 'd3-array' {
  export function quantileSorted(values: readonly number[], p: number): number | undefined;
}
