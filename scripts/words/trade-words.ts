/** Words of the trade, units and signs that a general dictionary lacks. Small letters allow the capital at the start of a sentence. */
export const tradeWords: readonly string[] = `
adapter adapters backplate brushless callipers chamfer CNC collet collets contactor contactors coupler crimper crimpers
doubler faceplate ferrite ferrites gib gibs Halfnut handwheel handwheels headstock HRC homings isolator kilohm
mH microstep microsteps millihenry multimeter N·m nitride NPN oiler Oldham overspeed overspeeds oversize PNP polycarbonate
preload preloaded sawn scribed swarf synchroniser tailstock tensioner threadlocker unwired windings µs closers
`
  .trim()
  .split(/\s+/);

/** Words that stand on screens only, outside the book and the lists. */
export const screenWords: readonly string[] = `
kg·cm
DRO GFCI IEC locknut milliamps millihenries pc quantiles RCD STO toolroom VFD Ω π
`
  .trim()
  .split(/\s+/);
