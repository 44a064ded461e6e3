import type { Fact } from './facts.ts';

const same = (value: number) => ({ small: value, medium: value, large: value });

export const workshopFacts: readonly Fact[] = [
  {
    id: 'hours-per-week',
    group: 'workshop',
    name: 'Hours a week',
    means: 'What you really spend in the workshop in an ordinary week.',
    unit: 'h/week',
    show: 'hours',
    sense: [0.5, 80],
    typical: same(6),
    howToMeasure: 'Think of the last month, not the best week of it.',
  },
  {
    id: 'outlet-amps',
    group: 'workshop',
    name: 'Rating of the outlet',
    means: 'The breaker or fuse that feeds the lathe.',
    unit: 'A',
    show: 'current',
    sense: [5, 100],
    typical: same(16),
    howToMeasure:
      'Read the figure on the breaker or fuse of that outlet. Ask an electrician if you are not sure which one it is.',
  },
  {
    id: 'mains-frequency',
    group: 'workshop',
    name: 'Mains frequency',
    means: '50 Hz in most of the world, 60 Hz in North America.',
    unit: 'Hz',
    show: 'frequency',
    sense: [45, 65],
    typical: same(50),
    howToMeasure: 'It is on the plate of any mains motor.',
  },
  {
    id: 'landed-rate',
    group: 'workshop',
    name: 'Your own figure for freight, tax and duty',
    means:
      'What comes on top of the shop price, as a share of it. Leave it empty to use ours for your country.',
    unit: '1',
    show: 'share',
    sense: [0, 1.5],
    typical: same(0.25),
    howToMeasure:
      'Take two recent orders: what you paid to your door, divided by the price of the goods, less one.',
  },
  {
    id: 'tax-rate',
    group: 'workshop',
    name: 'Sales tax or VAT where you live',
    means:
      'What a shop adds to its price, or your country adds at the border, as a share. It counts for what you have quotes for; leave it empty and a range stands in.',
    unit: '1',
    show: 'share',
    sense: [0, 0.3],
    howToMeasure: 'Read it off a recent receipt. Local taxes of state, county and town are added together.',
  },
  {
    id: 'duty-rate',
    group: 'workshop',
    name: 'Import duty you usually pay',
    means:
      'Share of goods and carriage that customs take on a parcel from abroad. A shop with a rate of its own goes first.',
    unit: '1',
    show: 'share',
    sense: [0, 1],
    howToMeasure:
      'From the customs note of a recent parcel: duty divided by the value it was taken on. Rates differ by goods and change often.',
  },
];
