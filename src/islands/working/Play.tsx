import { play } from '../../calc/working-figures/play.ts';
import { Working } from './Working.tsx';

export const Play = () => <Working figure={play} />;
