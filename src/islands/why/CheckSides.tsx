import { useStore } from '@nanostores/preact';
import type { Check } from '../../calc/core/check.ts';
import { $units } from '../preferences.ts';
import { quantityText } from '../shared/quantity.ts';
import { Why } from './Why.tsx';

interface SideProps {
  readonly check: Check;
  readonly side: 'value' | 'limit' | 'limitLow';
}

/** One side of a check as a figure that can be asked why; words where it is not known. */
export function Side({ check, side }: SideProps) {
  const units = useStore($units);
  const figure = check[side];
  if (!figure) return <>not known yet</>;
  const name = side === 'value' ? check.label : `the limit of: ${check.label}`;
  return (
    <Why asked={{ kind: 'check', id: check.id, side }} name={name}>
      {quantityText(figure, units)}
    </Why>
  );
}

/** "at most 13 A", or both limits where the value must lie between them. */
export function Limits({ check }: { check: Check }) {
  if (check.sense === 'between')
    return (
      <>
        from <Side check={check} side="limitLow" /> to <Side check={check} side="limit" />
      </>
    );
  return (
    <>
      {check.limit ? `${check.sense === 'at-most' ? 'at most' : 'at least'} ` : ''}
      <Side check={check} side="limit" />
    </>
  );
}
