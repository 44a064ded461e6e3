/** What the estimate does not hold, by theme: for the page that says so. */
export interface LeftOut {
  readonly id: string;
  readonly name: string;
  /** What stands outside the figures. */
  readonly out: string;
  /** What of it does stand inside, so that nobody counts it twice. */
  readonly held?: string;
  /** How to add it, and what the number then does. */
  readonly add: string;
  /** A page that helps, below the base, with its name. */
  readonly see?: { readonly page: string; readonly name: string };
}

const time: readonly LeftOut[] = [
  {
    id: 'worth-of-hours',
    name: 'What your own hours are worth',
    out: 'Hours are shown as hours and never turned into money by themselves. For some they are the hobby, for others they are lost pay.',
    add: 'Type what an hour is worth to you on the page Worth it. At ten dollars an hour, 150 hours add 1,500 dollars: often as much as all the parts.',
    see: { page: 'worth-it/', name: 'Worth it' },
  },
  {
    id: 'learning',
    name: 'Learning',
    held: 'The plan holds reading the manual, first programs and first parts.',
    out: 'It does not hold the months until it goes without thinking, nor learning to draw on a computer from nothing.',
    add: 'Nobody has good figures. Expect the first ten real parts to take longer than by hand, and the money to stay as it is.',
    see: { page: 'book/topics/making-programs/', name: 'Making programs' },
  },
  {
    id: 'years-after',
    name: 'Failures after the first year',
    held: 'Troubles of building, of commissioning and of the first months are played through in the builds.',
    out: 'A drive, a supply or a computer that dies in its third year is not. Nor are worn belts, wipers and batteries.',
    add: 'Put aside the price of one drive and one supply; both stand in the parts list. The money grows by that much, the hours hardly.',
  },
];

const machine: readonly LeftOut[] = [
  {
    id: 'tooling',
    name: 'Tooling that you will then want',
    held: 'A tool post, holders and a first set of inserts are on the list where your answers call for them and your drawer has none.',
    out: 'A better chuck, collets, more holders, a measuring probe and a shelf of inserts are not. They come one by one after the first good parts.',
    add: 'Add what you would buy anyway as your own lines. If you have nothing yet, tooling can come to as much as the motors and drives (common practice, no source).',
    see: { page: 'book/topics/tool-posts/', name: 'Tool posts' },
  },
  {
    id: 'faults',
    name: 'Faults that the lathe already has',
    held: 'Bad castings, play and worn slides count as troubles, likelier or rarer by your answers.',
    out: 'A bed that must be ground, a headstock that needs bearings or a cracked casting is a repair, not a conversion.',
    add: 'Measure first. A repair adds its own price and weeks, and can change the answer from convert to do not.',
    see: { page: 'lathe/', name: 'Your lathe' },
  },
  {
    id: 'resale',
    name: 'Resale: what the lathe sells for afterwards',
    held: 'For each place where you could stop, the plan says what the parts would bring, sold again.',
    out: 'The lathe itself is not priced, before or after. A home conversion can make it harder to sell, not dearer.',
    add: 'Ask what yours sells for unaltered and keep every part you take off. Take off the difference only if you mean to sell.',
  },
  {
    id: 'warranty',
    name: 'Warranty',
    out: 'A new lathe usually loses its warranty with the first hole you drill. Parts that you altered are seldom taken back.',
    add: 'If the lathe is under warranty, count what one large repair would cost. The figures of the plan stay as they are.',
  },
];

const place: readonly LeftOut[] = [
  {
    id: 'room',
    name: 'Room and heating',
    held: 'Fans and the heat of the cabinet are worked out.',
    out: 'A longer bench, a wall moved, rent and heating are not in it.',
    add: 'Measure with the motors, cabinet and guard in place; then price the bench or the wall as your own lines.',
  },
  {
    id: 'electricity',
    name: 'Electricity',
    held: 'What you buy to bring mains to the lathe is on the list where your answers call for it.',
    out: 'The running cost is not. A lathe that draws half a kilowatt for 100 hours a year uses 50 kWh.',
    add: 'Multiply by what your supplier asks. It seldom matters beside the parts. An electrician’s new circuit can: ask for a quote.',
  },
  {
    id: 'programs',
    name: 'Software for making programs',
    held: 'The licence of a control, and drawing software where you choose it, are lines. What is paid every year is listed apart.',
    out: 'Later fees, a fee that rises, and a computer that must be replaced because the new release asks for it.',
    add: 'Multiply the yearly line by the years that you will keep the lathe, and set it beside the sum paid once.',
    see: { page: 'book/topics/making-programs/', name: 'Making programs' },
  },
  {
    id: 'insurance',
    name: 'Insurance and the law',
    out: 'Insurance of the house or the workshop may ask about altered machines. If others work at it, you may count as its maker.',
    add: 'Ask before you start. A refusal is not a sum: it is a reason to stop or to have it inspected, with a bill of its own.',
    see: { page: 'safety/', name: 'Safety' },
  },
];

const world: readonly LeftOut[] = [
  {
    id: 'currency',
    name: 'What currencies and duties will do',
    held: 'Ranges are shown in your currency at the one rate that you type. Freight, tax and duty are a band by country.',
    out: 'Where the rate goes while you buy, and a duty that changes between order and door.',
    add: 'If half of your parts come from abroad, a rate that moves by a tenth moves the total by a twentieth. Type prices as you pay them.',
    see: { page: 'buy-list/', name: 'Buy list' },
  },
  {
    id: 'luck',
    name: 'Gifts, auctions and shortages',
    out: 'A servo from a friend, or a year in which nobody has drives, lies outside every band.',
    add: 'Type the price that you pay. It takes the place of our band and the range narrows.',
    see: { page: 'buy-list/', name: 'Buy list' },
  },
  {
    id: 'health',
    name: 'Health, and what an injury costs',
    held: 'What can hurt somebody is named beside the task and on the page Safety.',
    out: 'It is never weighed in money or set against a saving. Noise, mist and dust over years are not in it either.',
    add: 'Do not add it. Buy the guard, the stop circuit and the help of an electrician first, whatever they do to the total.',
    see: { page: 'safety/', name: 'Safety' },
  },
  {
    id: 'people',
    name: 'The people around you',
    held: 'The calendar plays your hours a week through to the end.',
    out: 'It does not know holidays, illness, a new child or a friend who helps for a weekend.',
    add: 'Set the hours a week to what you did in the last two months, not to what you hope for. The weeks then grow; hours and money stay.',
    see: { page: 'calendar/', name: 'Calendar' },
  },
];

/** Every theme with what is left out under it, as the page prints them. */
export const leftOut: readonly { readonly name: string; readonly items: readonly LeftOut[] }[] = [
  { name: 'Time', items: time },
  { name: 'Tools and machine', items: machine },
  { name: 'Place and running', items: place },
  { name: 'The world around', items: world },
];
