export { checks } from './checks.ts';
export { figures } from './design.ts';
export { parts } from './parts.ts';
export { risks } from './risks.ts';
export { rules } from './rules.ts';
export { tasks } from './tasks.ts';
