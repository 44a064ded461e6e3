import { drill } from '../../calc/working-figures/drill.ts';
import { Working } from './Working.tsx';

export const Drill = () => <Working figure={drill} />;
