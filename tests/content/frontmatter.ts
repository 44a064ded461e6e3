export { readHead } from '../../src/content/told/read-head.ts';
