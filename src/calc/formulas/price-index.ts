/**
 * Consumer prices in the United States, all items, city average, not seasonally adjusted, 1982-84 = 100: mean of
 * each year. The list is a household basket: steel rose faster, electronics slower, so an old price stays a guess.
 */
export const consumerPrices = {
  source: {
    ref: 'US Bureau of Labor Statistics, series CUUR0000SA0 (public domain)',
    at: 'annual averages; 2025 is the mean of eleven months, October 2025 was never published',
  },
  byYear: {
    2010: 218.056,
    2011: 224.939,
    2012: 229.594,
    2013: 232.957,
    2014: 236.736,
    2015: 237.017,
    2016: 240.007,
    2017: 245.12,
    2018: 251.107,
    2019: 255.657,
    2020: 258.811,
    2021: 270.97,
    2022: 292.655,
    2023: 304.702,
    2024: 313.689,
    2025: 321.943,
  } as Readonly<Record<number, number>>,
} as const;
