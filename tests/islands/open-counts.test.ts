import { expect, test } from 'vitest';
import { emptyPath } from '../../src/calc/core/path.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { openWords, questionsAnswered } from '../../src/islands/shared/open-counts.ts';

const bare = evaluate(emptyPath(currentEdition.edition), currentEdition);
const one = evaluate({ ...bare.path, answers: { purpose: ['thread-cutting'] } }, currentEdition);

test('questions are counted as the rooms count them; what the lathe page asks is counted apart', () => {
  const ofRooms = (count: 'asked' | 'answered') => one.rooms.reduce((sum, room) => sum + room[count], 0);
  expect(questionsAnswered(one)).toEqual({ asked: ofRooms('asked'), answered: ofRooms('answered') });
  expect(questionsAnswered(bare).answered).toBe(0);
});

test('what is open is said in words, and nothing where nothing is', () => {
  const open = one.openQuestions.length;
  const [questions, facts] = openWords(one).match(/\d+/g)!.map(Number);
  expect(openWords(one)).toMatch(/^\d+ questions and \d+ facts about the lathe$/);
  expect(questions! + facts!).toBe(open);
  expect(openWords({ choices: [] })).toBe('');
  const last = one.choices.find(({ place, status }) => place === 'lathe' && status === 'open')!;
  expect(openWords({ choices: [last] })).toBe('1 fact about the lathe');
});
