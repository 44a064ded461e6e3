import { batch } from '../../calc/working-figures/batch.ts';
import { Working } from './Working.tsx';

export const Batch = () => <Working figure={batch} />;
