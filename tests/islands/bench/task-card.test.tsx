import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { workingOf } from '../../../src/calc/working.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';
import { TaskCard } from '../../../src/islands/bench/TaskCard.tsx';

afterEach(cleanup);

const path = { ...referencePaths[0]!.path, edition: currentEdition.edition };
const working = workingOf(path, currentEdition);
const task = evaluate(path, currentEdition).stages.flatMap(({ tasks }) => tasks)[0]!;
const stand = working.tasks.find(({ id }) => id === task.id)!;
const none = { task: () => undefined, part: () => undefined, shelf: () => undefined };

test('a task that is next and open in its stage too has fields with names in both places', () => {
  const card = <TaskCard task={task} stand={stand} readings={[]} names={none} />;
  render(
    <>
      {card}
      {{ ...card }}
    </>,
  );
  expect(screen.getAllByRole('region', { name: task.name })).toHaveLength(2);
  expect(screen.getAllByRole('textbox', { name: 'Hours spent so far' })).toHaveLength(2);
  expect(screen.getAllByRole('textbox', { name: 'Note' })).toHaveLength(2);
});
