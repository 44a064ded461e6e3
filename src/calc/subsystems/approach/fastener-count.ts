/** A tenth more than is counted: screws fall behind the bench. */
const MORE = 1.1;

/** Cap screws and dowels for the brackets of the design. */
export function fastenerCount(figure: (id: string) => number): string | undefined {
  const brackets = figure('brackets');
  if (!(brackets > 0)) return undefined;
  const of = (id: string): number => Math.ceil(figure(id) * MORE - 1e-9);
  return `${of('cap-screws')} cap screws and ${of('dowels')} dowels for ${brackets} brackets, a tenth more counted in`;
}
