/** An outcome that one way in ten stays under, half of the ways, nine in ten. */
export interface Range {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}
