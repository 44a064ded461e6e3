export { reachChecks as checks } from './checks-reach.ts';
