import { leakage } from '../../calc/working-figures/leakage.ts';
import { Working } from './Working.tsx';

export const Leakage = () => <Working figure={leakage} />;
