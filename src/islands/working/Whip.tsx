import { whip } from '../../calc/working-figures/whip.ts';
import { Working } from './Working.tsx';

export const Whip = () => <Working figure={whip} />;
