import { ENTER_JOB } from '../routing/page-of.js';
import { PageLink } from '../routing/page-link.js';

/** What will stand on a board without jobs, and what to do next, by who looks at it. */
export function EmptyBoard({ role }: { readonly role: string }) {
  return (
    <section className="empty-board cell" aria-label="No job yet">
      <h2>No job is on the board yet</h2>
      <p>
        Each job will be a row here: its phases as bars over the days, the hold points on them, and the
        weather over its site.
      </p>
      {role === 'office' ? (
        <p>
          <PageLink to={ENTER_JOB} className="act act-strong act-link">
            Enter a job
          </PageLink>{' '}
          Crews and authority are asked for first.
        </p>
      ) : (
        <p>{NEXT[role] ?? 'The office enters the jobs; this page shows them by itself.'}</p>
      )}
    </section>
  );
}

const NEXT: Readonly<Record<string, string>> = {
  electrician:
    'The office enters the jobs. You hear by mail the moment the leads of one are through the wall and tested; there is nothing to do until then.',
};
