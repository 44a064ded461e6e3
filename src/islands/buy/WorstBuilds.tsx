import { useState } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import type { WorstBuild } from '../../calc/worst-builds.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { buildWords } from './build-words.ts';

function Build({ build }: { build: WorstBuild }) {
  const { money, standing, reasons } = buildWords(build);
  return (
    <li>
      <b>{money}</b>, {standing}: {reasons}.
    </li>
  );
}

const FIVE = 5;

/** What the dear ones among the twenty have in common; worked out when somebody asks. */
export function WorstBuilds({ report }: { report: Report }) {
  const [asked, setAsked] = useState(false);
  const { answer } = useAnswer('dearest', report.path, asked);
  const builds = answer?.slice(0, FIVE);
  return (
    <section class="rule-section" id="dear-ones" tabIndex={-1}>
      <h2>Why the dear ones are dear</h2>
      <p>
        The five dearest of the 20 ways, each with what made it so, against average prices with nothing going
        wrong. What stands there more than once is worth preventing.
      </p>
      {builds ? (
        <ol class="worst-builds">
          {builds.map((build) => (
            <Build key={build.place} build={build} />
          ))}
        </ol>
      ) : (
        <button type="button" class="button" aria-disabled={asked} onClick={() => setAsked(true)}>
          {asked ? 'Working them out …' : 'Show the five dearest'}
        </button>
      )}
    </section>
  );
}
