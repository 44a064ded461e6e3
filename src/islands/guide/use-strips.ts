import { useStore } from '@nanostores/preact';
import type { OptionEffect } from '../../calc/choosing.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { useReady } from '../shared/ready.ts';
import { $path } from '../stores.ts';
import { type StripScale, scaleOf } from './strip-scale.ts';

/** What the options of a question would do, as far as it is known by now. */
export interface Strips {
  readonly of: (option: string) => OptionEffect | undefined;
  readonly scale: StripScale | undefined;
  readonly isOld: boolean;
}

/** The strips of a question, worked out beside the page; empty until they come. */
export function useStrips(question: string): Strips {
  const path = useStore($path);
  const { answer, isOld } = useAnswer('effects', path, useReady(), question);
  return {
    of: (id) => answer?.options.find(({ option }) => option === id),
    scale: answer && scaleOf(answer),
    isOld,
  };
}
