import { ResultMark } from './ResultMark.tsx';

/** What is said of something typed that cannot be used: it stays in its field, and what was there before still counts. */
export function NotKept({ say }: { say: string }) {
  return (
    <>
      <ResultMark result="stop" word="not kept" /> {say}
    </>
  );
}
