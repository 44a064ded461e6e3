import { useEffect, useRef } from 'preact/hooks';
import { askedPlace } from './places.ts';

interface Props {
  /** What the anchors of the list begin with, as "check". */
  readonly kind: string;
  readonly ids: readonly string[];
  /** The anchor that was asked for; by itself that of the address. */
  readonly asked?: string | undefined;
}

/** Says so to whoever came for one of a list that this path has not. */
export function NotHere({ kind, ids, asked = askedPlace() }: Props) {
  const note = useRef<HTMLParagraphElement>(null);
  useEffect(() => note.current?.closest('section')?.scrollIntoView(), []);
  if (!asked?.startsWith(`${kind}-`) || ids.some((id) => asked === `${kind}-${id}`)) return null;
  return (
    <p ref={note} class="look no-print">
      The {kind} that you came for is not on this path: your answers do without it.
    </p>
  );
}
