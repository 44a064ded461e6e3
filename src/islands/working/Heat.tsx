import { heat } from '../../calc/working-figures/heat.ts';
import { Working } from './Working.tsx';

export const Heat = () => <Working figure={heat} />;
