import type { ComponentChildren } from 'preact';
import { STRIP_HATCH } from './strip-hatch.ts';

function Sign({ children, say }: { children: ComponentChildren; say: string }) {
  return (
    <span>
      <svg class="strip-drawing" width="34" height="22" aria-hidden="true">
        {children}
      </svg>
      {say}
    </span>
  );
}

/** What each mark of the strip means. */
export function StripKey({ apart }: { apart: string }) {
  return (
    <p class="strip-key small">
      <Sign say="a task">
        <rect class="strip-task" x="2" y="3" width="30" height="14" />
      </Sign>
      <Sign say="next to do">
        <rect class="strip-task is-next" x="2" y="3" width="30" height="14" />
      </Sign>
      <Sign say="heavy line: on the longest chain">
        <rect class="strip-task" x="2" y="1" width="30" height="14" />
        <line class="strip-chain" x1="2" x2="32" y1="18.5" y2="18.5" />
      </Sign>
      <Sign say="early and late end of a stage">
        <g class="strip-ends">
          <line x1="3" x2="31" y1="11" y2="11" />
          <line x1="3" x2="3" y1="6" y2="16" />
          <line x1="31" x2="31" y1="6" y2="16" />
        </g>
      </Sign>
      <Sign say={apart}>
        <rect width="34" height="22" fill={`url(#${STRIP_HATCH})`} />
      </Sign>
      <Sign say="parcel ordered, on its way, here">
        <line class="parcel-way" x1="4" x2="30" y1="11" y2="11" />
        <circle class="parcel-sent" cx="4" cy="11" r="3" />
        <rect class="parcel-here" x="26" y="7.5" width="7" height="7" />
      </Sign>
    </p>
  );
}
