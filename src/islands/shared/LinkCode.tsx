import { useEffect, useMemo, useState } from 'preact/hooks';
import type { DrawnCode } from './draw-code.ts';
import { onPrint } from './on-print.ts';

type Draw = (text: string) => DrawnCode | undefined;

const load = async (): Promise<Draw> => (await import('./draw-code.ts')).drawCode;
/** A browser does not wait for a download once it prints, so the pen is fetched when the page has nothing else to do. */
const whenIdle = (work: () => void): void => {
  if ('requestIdleCallback' in window) window.requestIdleCallback(work);
  else setTimeout(work, 500);
};

/** Draws the code of a link once it is asked for, or once the page goes to paper. */
function useCode(link: string, asked: boolean) {
  const [draw, setDraw] = useState<Draw>();
  const [printed, setPrinted] = useState(false);
  useEffect(() => whenIdle(() => load().then((pen) => setDraw(() => pen))), []);
  useEffect(() => onPrint(() => setPrinted(true)), []);
  const wanted = draw !== undefined && (asked || printed);
  const code = useMemo(() => (wanted ? draw(link) : undefined), [wanted, draw, link]);
  return { code, tooLong: wanted && code === undefined };
}

function Square({ code }: { code: DrawnCode }) {
  const across = code.squares + 8;
  return (
    <svg
      class="link-square"
      role="img"
      aria-label="The link as a code to photograph"
      viewBox={`-4 -4 ${across} ${across}`}
      width={`${code.side}mm`}
      height={`${code.side}mm`}
      shape-rendering="crispEdges"
    >
      <rect class="code-ground" x="-4" y="-4" width={across} height={across} />
      <path class="code-ink" d={code.d} />
    </svg>
  );
}

/** A link as a code for a telephone; says in words when it is too long for one. */
export function LinkCode({ link, asked = false }: { link: string; asked?: boolean }) {
  const { code, tooLong } = useCode(link, asked);
  if (tooLong) return <p class="small">This link is too long for a code: type it, or keep the file.</p>;
  return code ? <Square code={code} /> : null;
}
