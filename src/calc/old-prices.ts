/** The entrance for "I saw this part at so much in that year". */
export { type Carried, carryForward, type OldPrice } from './cost/old-price.ts';
