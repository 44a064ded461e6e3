import { cable } from '../../calc/working-figures/cable.ts';
import { Working } from './Working.tsx';

export const Cable = () => <Working figure={cable} />;
