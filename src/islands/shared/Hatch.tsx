interface HatchProps {
  id: string;
  tone: 'ink' | 'blue' | 'look';
  /** Distance between lines, in the drawing's own units. */
  pitch?: number;
  /** Turn of the hatch; a neighbour takes another so that the two part from each other. */
  turn?: number;
  weight?: number;
}

/** A 45-degree hatch to fill with `fill="url(#id)"`. The id must be the only one on its page. */
export function Hatch({ id, tone, pitch = 9, turn = 45, weight = pitch * 0.12 }: HatchProps) {
  return (
    <pattern
      id={id}
      width={pitch}
      height={pitch}
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${turn})`}
    >
      <rect class="hatch-ground" width={pitch} height={pitch} />
      <line class={`hatch-${tone}`} x1="0" x2="0" y1="0" y2={pitch} stroke-width={weight * 2} />
    </pattern>
  );
}
