import { PageLink } from '../routing/page-link.js';
import { HOOKUP_WORDS } from '../words/state-words.js';
import type { JobRecords } from './job-types.js';

/** The ways to the hookup sheets of the job. */
export function HookupList({ hookups }: { readonly hookups: JobRecords['hookups'] }) {
  return (
    <section className="job-sheet" aria-label="Hookups">
      <h2>Hookups</h2>
      <ul>
        {hookups.map(({ id, state, heatingSet }) => (
          <li key={id}>
            <PageLink to={`/hookups/${id}`}>{heatingSet.name}</PageLink>: {HOOKUP_WORDS[state]}
          </li>
        ))}
      </ul>
      {hookups.length === 0 && (
        <p>
          This job has no heating set, so there is nothing to hook up. A set that is measured has its hookup
          here.
        </p>
      )}
    </section>
  );
}
