import type { Carried } from '../../calc/choosing.ts';
import { counted } from '../shared/format.ts';
import { byRoom, nameOf, USUALLY_FREE, usuallyFree } from './free.ts';
import { wayHours, wayMoney } from './words.ts';

interface Props {
  readonly carried: readonly Carried[];
  readonly free: readonly string[];
  readonly setFree: (free: readonly string[]) => void;
}

/** How far a question alone can move the plan, typically. */
function reach({ money, hours }: Carried): string {
  const said = [...(money >= 5 ? [wayMoney(money)] : []), ...(hours >= 0.5 ? [wayHours(hours)] : [])];
  return said.length > 0 ? `moves ${said.join(', ')}` : 'moves neither money nor hours';
}

interface RoomProps extends Omit<Props, 'carried'> {
  readonly room: string;
  readonly questions: readonly Carried[];
}

function Room({ room, questions, free, setFree }: RoomProps) {
  const ticked = questions.filter(({ decision }) => free.includes(decision)).length;
  const turn = (id: string, on: boolean) => setFree(on ? [...free, id] : free.filter((each) => each !== id));
  return (
    <details>
      <summary>
        {room}{' '}
        <span class="quiet small">
          {ticked} of {questions.length} free
        </span>
      </summary>
      <div class="choice-list">
        {questions.map((each) => (
          <label class="choice" key={each.decision}>
            <input
              type="checkbox"
              checked={free.includes(each.decision)}
              onChange={(event) => turn(each.decision, event.currentTarget.checked)}
            />
            <span>
              {nameOf(each.decision)}
              <span class="choice-about">
                {each.status === 'answered' ? 'answered' : 'open'}; {reach(each)}
              </span>
            </span>
          </label>
        ))}
      </div>
    </details>
  );
}

/** Which questions the search may answer anew; all others stand as they are in the plan. */
export function FreeQuestions({ carried, free, setFree }: Props) {
  const open = carried.filter(({ status }) => status !== 'answered').map(({ decision }) => decision);
  return (
    <section class="rule-section ways-free">
      <h2>Free questions</h2>
      <p class="small">
        {counted(free.length, 'question')} may be answered anew; every other stands as in your plan. Ticked to
        begin with: the {USUALLY_FREE} that carry most, open ones first. What it drives, whom it serves and
        how it is used by hand are yours to say: tick those too if you would take less.
      </p>
      <p class="notice-actions no-print">
        <button type="button" class="button small" onClick={() => setFree(usuallyFree(carried))}>
          Those that carry most
        </button>
        {open.length > 0 && open.length <= 20 ? (
          <button type="button" class="button small" onClick={() => setFree(open)}>
            Only the open ones
          </button>
        ) : null}
        <button type="button" class="button small" onClick={() => setFree([])}>
          None
        </button>
      </p>
      {byRoom(carried).map((room) => (
        <Room key={room.room} {...room} free={free} setFree={setFree} />
      ))}
    </section>
  );
}
