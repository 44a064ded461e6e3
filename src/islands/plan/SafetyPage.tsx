import { safety } from '../../content/safety.ts';
import { to } from '../shared/places.ts';

/** The safety page of the plan, the same words as the page of its own, to hang beside the lathe. */
export function SafetyPage() {
  return (
    <section class="rule-section page-break" id="safety" tabIndex={-1}>
      <h2>Safety</h2>
      <p>
        {safety.foreword} <a href={to('safety/')}>The page of its own</a>.
      </p>
      <div class="safety-columns">
        {safety.parts.map(({ title, lines }) => (
          <section key={title} class="safety-part">
            <h3>{title}</h3>
            <ul>
              {lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </section>
        ))}
      </div>
    </section>
  );
}
