import { useEffect, useRef, useState } from 'react';
import { EnteringDocument, type EnteringQuery } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { HatchDefinitions } from '../draw/hatches.js';
import { PageLink } from '../routing/page-link.js';
import { OutcomeList } from '../sends/outcome-list.js';
import { useSignedIn } from '../session/session.js';
import { dateWords } from '../time/moment-words.js';
import { equipmentMissing, stillMissing, STEPS, tradesMissing } from './still-missing.js';
import { AuthorityStep } from './steps/authority-step.js';
import { CrewsStep } from './steps/crews-step.js';
import { EquipmentStep } from './steps/equipment-step.js';
import { JobStep, JobStepToCome } from './steps/job-step.js';
import { SiteStep } from './steps/site-step.js';
import './entering-page.css';

/** From nothing to a planned job: what is missing for it, and the job itself. It can be left and come back to. */
export function EnteringPage() {
  const { me } = useSignedIn();
  const office = me.role === 'office';
  const { data, error } = useQuery(EnteringDocument, {}, { when: office });
  return (
    <div className="entering">
      <HatchDefinitions />
      <nav aria-label="Pages">
        <PageLink to="/">Board</PageLink>
      </nav>
      <main>
        <h1>Enter a job</h1>
        {!office && (
          <p>Jobs are entered by the office. Ask them, or look on the board for those there are.</p>
        )}
        {error && <p className="fault">{error.message}</p>}
        {office && !data && !error && <p>Asking for what is entered already.</p>}
        {data && <Steps entered={data} />}
        <OutcomeList />
      </main>
    </div>
  );
}

function Steps({ entered }: { readonly entered: EnteringQuery }) {
  const { me, company } = useSignedIn();
  const [newSite, setNewSite] = useState<string | null>(null);
  const missing = stillMissing(entered);
  const first = missing[0] ?? 'job';
  useFocusOnNext(first);
  const sites = entered.sites.edges.map(({ node }) => node);
  const { zone } = company;
  return (
    <>
      <p className="entering-lead">
        {missing.length > 1
          ? `${STEPS.length - missing.length} of ${STEPS.length} notes are entered. What is entered stays; leave the page and come back when you like.`
          : 'All that a job needs is there. Enter the entry as measured; then its plan is made, and you see the dates before you promise any.'}
      </p>
      <ToCommit jobs={entered.jobs} zone={zone} />
      <ol className="steps">
        <CrewsStep
          crews={entered.crews.filter(({ active }) => active)}
          missing={tradesMissing(entered)}
          zone={zone}
        />
        <EquipmentStep pools={entered.equipmentPools} missing={equipmentMissing(entered)} />
        <AuthorityStep authorities={entered.authorities} zone={zone} />
        <SiteStep sites={sites} authorities={entered.authorities} zone={zone} onEntered={setNewSite} />
        {missing.length > 1 ? (
          <JobStepToCome />
        ) : (
          <JobStep sites={sites} newSite={newSite} zone={zone} personId={me.id} />
        )}
      </ol>
    </>
  );
}

/** Jobs that are planned and of which nothing is promised yet. */
function ToCommit({ jobs, zone }: { readonly jobs: EnteringQuery['jobs']; readonly zone: string }) {
  const open = jobs.edges.map(({ node }) => node).filter(({ committedFinish }) => !committedFinish);
  if (open.length === 0) return null;
  return (
    <section className="cell" aria-label="Not committed yet">
      <h2>Not committed yet</h2>
      <ul>
        {open.map(({ id, number, name, plannedFinish }) => (
          <li key={id}>
            <PageLink to={`/jobs/${number}`}>
              {number} {name}
            </PageLink>
            :{' '}
            {plannedFinish
              ? `planned to end ${dateWords(Date.parse(plannedFinish), zone)}`
              : 'has no whole plan yet'}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Goes on to the next note when the one that was being entered is done. */
function useFocusOnNext(first: string): void {
  const before = useRef(first);
  useEffect(() => {
    if (before.current === first) return;
    before.current = first;
    document.getElementById(`step-${first}`)?.focus();
  }, [first]);
}
