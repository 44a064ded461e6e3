import { parts, risks } from '../calc/trade.ts';
import { alternatives } from '../content/alternatives.ts';
import { currentEdition, editions } from '../content/edition.ts';

/**
 * The names that a link may use besides questions and figures. The build of the site replaces this module by its own
 * result (see `workedOut` in astro.config.mjs): whoever reads a link needs these few names, not the trade behind them.
 */
export const editionNames: readonly string[] = editions.map((book) => book.edition);
export const currentName: string = currentEdition.edition;
export const partNames: readonly string[] = parts.map((part) => part.id);
export const riskNames: readonly string[] = risks.map((risk) => risk.id);
export const alternativeNames: readonly string[] = alternatives.map(({ id }) => id);
