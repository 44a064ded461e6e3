import type { Range } from '../../calc/core/range.ts';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import type { Measure } from './words.ts';

interface Props {
  readonly range: Range;
  readonly measure: Measure;
}

/** The range in which 16 of 20 ways lie, drawn as a dimension, with what is typical under it. */
export function Within({ range: { p10, p50, p90 }, measure: { one, span } }: Props) {
  if (p10 === p90) return <span>{one(p50)}</span>;
  return (
    <span class="within">
      <DimensionLine text={span(p10, p90)} length={118} />
      <span class="quiet small">typically {one(p50)}</span>
    </span>
  );
}
