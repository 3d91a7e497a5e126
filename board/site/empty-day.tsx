import { ENTER_JOB } from '../routing/page-of.js';
import { PageLink } from '../routing/page-link.js';

/** What will stand on a site sheet without phases, and what to do next, by who looks at it. */
export function EmptyDay({ role }: { readonly role: string }) {
  return (
    <section className="cell" aria-label="Nothing for today">
      <p>
        Phases that are under way, and those planned for today and tomorrow, stand here with what is in their
        way. None is, so there is nothing to start.
      </p>
      {role === 'office' ? (
        <p>
          <PageLink to={ENTER_JOB}>Enter a job</PageLink>, or see on the <PageLink to="/">board</PageLink>{' '}
          when work begins.
        </p>
      ) : (
        <p>
          See on the <PageLink to="/">board</PageLink> when work begins. The office enters jobs and commits
          their dates.
        </p>
      )}
    </section>
  );
}
