import { edges } from '../../calc/working-figures/edges.ts';
import { Working } from './Working.tsx';

export const Edges = () => <Working figure={edges} />;
