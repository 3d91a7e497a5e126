import { HookupPageDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { PageLink } from '../routing/page-link.js';
import { OutcomeList } from '../sends/outcome-list.js';
import { useSignedIn } from '../session/session.js';
import { serviceNow } from '../time/service-clock.js';
import { HOOKUP_WORDS } from '../words/state-words.js';
import { HookupBody } from './hookup-body.js';
import './hookup-page.css';

/** The hookup of one heating set for whoever is signed in; the electrician may also have it by a link. */
export function HookupPage({ id }: { readonly id: string }) {
  const { me, company } = useSignedIn();
  const { data, error } = useQuery(HookupPageDocument, { id });
  const hookup = data?.hookup ?? null;
  const may = me.role === 'electrician' || me.role === 'office';
  return (
    <div className="hookup">
      <nav aria-label="Pages">
        <PageLink to="/">Board</PageLink>
        {hookup && <PageLink to={`/jobs/${hookup.job.number}`}>Job {hookup.job.number}</PageLink>}
      </nav>
      <main>
        {error && <p className="fault">{error.message}</p>}
        {!data && !error && <p>Asking for the hookup.</p>}
        {data && !hookup && (
          <>
            <h1>There is no such hookup</h1>
            <p>Open it from the page of its job, or from the newest notice.</p>
          </>
        )}
        {hookup && (
          <>
            <header className="cell">
              <p className="caption">
                Hookup, job {hookup.job.number} {hookup.job.name}
              </p>
              <h1>{hookup.heatingSet.name}</h1>
              <p>
                {hookup.job.site.address}, {hookup.job.site.town}. <b>{HOOKUP_WORDS[hookup.state]}</b>
                {hookup.electrician && `, ${hookup.electrician.name}`}.
              </p>
            </header>
            <HookupBody hookup={hookup} zone={company.zone} now={serviceNow()} may={may} />
          </>
        )}
        <OutcomeList />
      </main>
    </div>
  );
}
