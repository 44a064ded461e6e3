/** A tenth more than is counted; common practice, no source. */
const MORE = 1.1;
/** A fifth more glands: one is always added later. */
const MORE_GLANDS = 1.2;

type Figures = (id: string) => number;

const up = (value: number): number => Math.ceil(value - 1e-9);

/** Ferrules for the wire ends of the design. */
export function ferruleCount(figure: Figures): string | undefined {
  const ends = figure('wire-ends');
  return ends > 0
    ? `about ${up(ends * MORE)} ferrules and lugs: ${ends} wire ends, a tenth more counted in`
    : undefined;
}

/** Wire numbers: one on each end. */
export function labelCount(figure: Figures): string | undefined {
  const ends = figure('wire-ends');
  return ends > 0 ? `about ${up(ends * MORE)} wire numbers, one for each end` : undefined;
}

/** Glands for the cables that enter the box. */
export function glandCount(figure: Figures): string | undefined {
  const cables = figure('cables-entering');
  return cables > 0
    ? `${up(cables * MORE_GLANDS)} glands: ${cables} cables, a fifth more counted in`
    : undefined;
}
