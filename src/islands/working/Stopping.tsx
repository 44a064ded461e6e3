import { stopping } from '../../calc/working-figures/stopping.ts';
import { Working } from './Working.tsx';

export const Stopping = () => <Working figure={stopping} />;
