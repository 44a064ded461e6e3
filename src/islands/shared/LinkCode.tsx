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
  // Without the pen, as where the page is being left or the network is gone, the link stands there in letters.
  useEffect(
    () =>
      whenIdle(() =>
        load().then(
          (pen) => setDraw(() => pen),
          () => undefined,
        ),
      ),
    [],
  );
  useEffect(() => onPrint(() => setPrinted(true)), []);
  const wanted = draw !== undefined && (asked || printed);
  const code = useMemo(() => (wanted ? draw(link) : undefined), [wanted, draw, link]);
  return { code, tooLong: wanted && code === undefined };
}

/** Dots of a screen for one square, so that every square is as wide as the next. Common practice, no source. */
const SCREEN_DOTS = 3;

function Square({ code, onScreen }: { code: DrawnCode; onScreen: boolean }) {
  const across = code.squares + 8;
  const side = onScreen ? `${across * SCREEN_DOTS}px` : `${code.side}mm`;
  return (
    <svg
      class="link-square"
      role="img"
      aria-label="The link as a code to photograph"
      viewBox={`-4 -4 ${across} ${across}`}
      width={side}
      height={side}
      shape-rendering="crispEdges"
    >
      <rect class="code-ground" x="-4" y="-4" width={across} height={across} />
      <path class="code-ink" d={code.d} />
    </svg>
  );
}

interface Props {
  readonly link: string;
  readonly asked?: boolean;
  /** To be photographed from the screen, in whole dots, rather than from paper. */
  readonly onScreen?: boolean;
}

/** A link as a code for a telephone; says in words when it is too long for one. */
export function LinkCode({ link, asked = false, onScreen = false }: Props) {
  const { code, tooLong } = useCode(link, asked);
  if (tooLong)
    return (
      <p class="small">
        This link is too long for a code that a telephone reads: one holds about 2,300 characters. The link
        itself and the file hold more.
      </p>
    );
  return code ? <Square code={code} onScreen={onScreen} /> : null;
}
