import { factById } from '../../calc/facts.ts';
import { lathePlace } from '../shared/places.ts';

/** The figures of the lathe that a check still needs, each with the way to its field. */
export function CheckNeeds({ needs }: { needs: readonly string[] | undefined }) {
  const named = (needs ?? []).flatMap((id) => factById(id) ?? []);
  return (
    <>
      {named.map(({ id, name }) => (
        <span key={id} class="task-note">
          Needs:{' '}
          <a href={lathePlace(id)} data-keep-path>
            {name}
          </a>
          {' (how to measure it stands there)'}
        </span>
      ))}
    </>
  );
}
