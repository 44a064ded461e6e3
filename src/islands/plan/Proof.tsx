import type { PlannedTask } from '../../calc/evaluate.ts';
import { Blank } from './Glyphs.tsx';

interface Props {
  readonly tasks: readonly PlannedTask[];
  readonly numbers: ReadonlyMap<string, string>;
}

/** How you know that a task is done: the test with its limit, and a line for what you measured. */
export function Proof({ tasks, numbers }: Props) {
  return (
    <>
      <h3>Proof: write down what you measured</h3>
      {tasks.map((task) => (
        <div key={task.id} class="proof-row">
          <span class="proof-name">
            <span class="task-number">{numbers.get(task.id)}</span> {task.test}
          </span>
          <span class="limit">
            measured <Blank what={`measured for ${task.name}`} />
          </span>
        </div>
      ))}
    </>
  );
}
