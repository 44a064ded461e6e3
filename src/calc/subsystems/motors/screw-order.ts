/** Bars and finished screws are sold in such steps, m; common practice, no source. */
const STEP = 0.05;

const mm = (metres: number): number => Math.round(metres * 1e5) / 100;

/** What to order of a screw, from the design: size, thread and whole length, and the stock length it is cut from. */
export const screwOrder =
  (slide: 'carriage' | 'cross') =>
  (figure: (id: string) => number): string | undefined => {
    const whole = figure(`${slide}-screw-length`);
    const thread = figure(`${slide}-screw-thread`);
    const diameter = figure(`${slide}-screw-diameter`);
    const lead = figure(`${slide}-lead`);
    if (!(whole > 0 && thread > 0 && diameter > 0 && lead > 0)) return undefined;
    const stock = Math.ceil(whole / STEP - 1e-9) * STEP;
    return `order ${mm(diameter)} × ${mm(lead)} mm, ${Math.ceil(mm(whole))} mm over all with ${Math.ceil(mm(thread))} mm of thread; cut from ${mm(stock)} mm`;
  };
