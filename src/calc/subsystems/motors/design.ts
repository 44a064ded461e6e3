export { figures } from './design-supply.ts';
