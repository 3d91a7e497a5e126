import { EntryDesignDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { DesignTable } from '../job/design-table.js';
import { PageLink } from '../routing/page-link.js';
import { useSignedIn } from '../session/session.js';
import { EntryDesignBlock } from './entry-design-block.js';
import '../job/job-page.css';

/** The design of a job on sheets to print: drawings to scale, figures, and what the rules say. */
export function DesignPage({ number }: { readonly number: number }) {
  const { company } = useSignedIn();
  const { data, error } = useQuery(EntryDesignDocument, { number });
  const job = data?.jobByNumber ?? null;
  return (
    <div className="job-page design-page">
      <nav aria-label="Pages">
        <PageLink to="/">Board</PageLink> <PageLink to={`/jobs/${number}`}>Job {number}</PageLink>
      </nav>
      <main>
        {error && <p className="fault">{error.message}</p>}
        {!data && !error && <p>Asking for the design of job {number}.</p>}
        {data && !job && (
          <>
            <h1>There is no job {number}</h1>
            <p>Look on the board for the number of the job.</p>
          </>
        )}
        {job && (
          <>
            <header>
              <h1>
                Design of job {job.number}, {job.name}
              </h1>
              <p>
                {job.site.address}, {job.site.town}. For {job.ownerName}.
              </p>
              <p className="design-print">
                <button type="button" className="act" onClick={() => print()}>
                  Print to scale
                </button>{' '}
                Print at 100 %, not fitted to the page; a stroke of one inch under each drawing shows whether
                it is.
              </p>
            </header>
            {job.design ? (
              <EntryDesignBlock design={job.design} />
            ) : (
              <p>The measurements of this job cannot be read; nothing is designed from them.</p>
            )}
            <DesignTable findings={job.findings} zone={company.zone} />
          </>
        )}
      </main>
    </div>
  );
}
