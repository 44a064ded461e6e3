import { runUp } from '../../calc/working-figures/run-up.ts';
import { Working } from './Working.tsx';

export const RunUp = () => <Working figure={runUp} />;
