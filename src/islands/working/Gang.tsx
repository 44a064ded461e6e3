import { gang } from '../../calc/working-figures/gang.ts';
import { Working } from './Working.tsx';

export const Gang = () => <Working figure={gang} />;
