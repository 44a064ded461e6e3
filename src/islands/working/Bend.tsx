import { bend } from '../../calc/working-figures/bend.ts';
import { Working } from './Working.tsx';

export const Bend = () => <Working figure={bend} />;
