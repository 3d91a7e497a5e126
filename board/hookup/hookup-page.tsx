import { HookupPageDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { HeatingSetBlock } from '../job/heating-set-block.js';
import { PageLink } from '../routing/page-link.js';
import { OutcomeList } from '../sends/outcome-list.js';
import { useSignedIn } from '../session/session.js';
import { dayWords, isoWords } from '../time/moment-words.js';
import { HOOKUP_WORDS } from '../words/state-words.js';
import { BookForm } from './book-form.js';
import { NeedList } from './need-list.js';
import { RecordForm } from './record-form.js';
import './hookup-page.css';

/** The electrician's sheet: what is ready and what is not, circuit, leads, readings, cautions; book and record. */
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
                {hookup.bookedFor && `, booked for ${dayWords(Date.parse(hookup.bookedFor), company.zone)}`}
                {hookup.doneAt && `, done ${isoWords(hookup.doneAt, company.zone)}`}
                {hookup.electrician && `, ${hookup.electrician.name}`}.
              </p>
            </header>
            <section aria-label="Cautions" className="cautions">
              <h2>Cautions</h2>
              <ul>
                {hookup.cautions.map((caution) => (
                  <li key={caution}>{caution}</li>
                ))}
              </ul>
            </section>
            <NeedList title="Needed before the hookup" needs={hookup.needs} />
            <section aria-label="Circuit">
              <h2>Circuit</h2>
              <p>{hookup.circuit.text}</p>
              <p>
                Source: {hookup.circuit.source}. The authority having jurisdiction and the licensed
                electrician decide.
              </p>
              <p>
                Cold lead {hookup.coldLeadThrough ? 'through the wall' : 'not through the wall yet'}
                {hookup.coldLeadFreeInches !== null && `, ${hookup.coldLeadFreeInches} in free`}; sensor lead{' '}
                {hookup.sensorThrough ? 'through the wall' : 'not through the wall yet'}; leads{' '}
                {hookup.leadsLabelled ? 'labelled' : 'not labelled yet'}.
              </p>
            </section>
            <HeatingSetBlock set={hookup.heatingSet} zone={company.zone} />
            {may && hookup.state !== 'done' && <BookForm hookup={hookup} zone={company.zone} />}
            {may && hookup.state !== 'done' && <RecordForm hookup={hookup} />}
            <NeedList title="Needed before energising" needs={hookup.energisingNeeds} />
          </>
        )}
        <OutcomeList />
      </main>
    </div>
  );
}
