import { BOX, type Picture, type PlacedBox } from './picture.ts';

function Task({ box }: { box: PlacedBox }) {
  const top = box.y + (BOX.high - box.lines.length * BOX.line) / 2 + 10.5;
  return (
    <>
      <rect
        class={`task-box${box.done ? ' is-done' : ''}`}
        x={box.x}
        y={box.y}
        width={BOX.wide}
        height={BOX.high}
      />
      {box.critical ? (
        <line
          class="chain"
          x1={box.x}
          x2={box.x + BOX.wide}
          y1={box.y + BOX.high - 2}
          y2={box.y + BOX.high - 2}
        />
      ) : null}
      {box.lines.map((line, at) => (
        <text key={at} x={box.x + 9} y={top + at * BOX.line}>
          {line}
        </text>
      ))}
    </>
  );
}

/** Boxes of tasks with lines down to what waits for them. A wide one scrolls in its own box; the table says the same. */
export function StagePicture({ picture, stage }: { picture: Picture; stage: string }) {
  const label = `Picture of what waits for what: ${stage}`;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached from the keyboard
    <section class="picture-box" aria-label={label} tabIndex={0}>
      <svg
        class="drawing depends"
        role="img"
        aria-label={`${label}. The table beside it says the same.`}
        width={picture.width}
        height={picture.height}
        viewBox={`0 0 ${picture.width} ${picture.height}`}
      >
        {picture.lines.map(({ key, d, critical }) => (
          <path key={key} class={critical ? 'wait is-chain' : 'wait'} d={d} />
        ))}
        {picture.boxes.map((box) => (
          <Task key={box.id} box={box} />
        ))}
      </svg>
    </section>
  );
}
