import { belt } from '../../calc/working-figures/belt.ts';
import { Working } from './Working.tsx';

export const Belt = () => <Working figure={belt} />;
