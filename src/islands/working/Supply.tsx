import { supply } from '../../calc/working-figures/supply.ts';
import { Working } from './Working.tsx';

export const Supply = () => <Working figure={supply} />;
