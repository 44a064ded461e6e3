import { useStore } from '@nanostores/preact';
import { $shown, toShown } from './currency.ts';
import { moneyMark } from './format.ts';
import { Rod, type RodProps } from './Rod.tsx';

type Props = Omit<RodProps, 'format' | 'unitWord'>;

/** A rod of money: dollars in, drawn on a scale of the currency that is shown, so that its marks stay round. */
export function MoneyRod({ values, before, limit, ...props }: Props) {
  const { word } = useStore($shown);
  return (
    <Rod
      {...props}
      values={values.map(toShown)}
      {...(before ? { before: before.map(toShown) } : {})}
      {...(limit === undefined ? {} : { limit: toShown(limit) })}
      format={moneyMark}
      unitWord={word}
    />
  );
}
