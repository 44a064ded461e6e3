/** Said beside every figure of an alternative. */
export const alternativesBasis =
  'Planning figures from memory of the trade, not quotations, of the same month as the newest edition of prices.';
