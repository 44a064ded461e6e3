import { leadTime } from '../../calc/working-figures/lead-time.ts';
import { Working } from './Working.tsx';

export const LeadTime = () => <Working figure={leadTime} />;
