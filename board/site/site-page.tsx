import { useEffect } from 'react';
import { TodayDocument } from '../api/documents.js';
import { useLive } from '../api/live.js';
import { useQuery } from '../api/use-query.js';
import { HatchDefinitions } from '../draw/hatches.js';
import { PageLink } from '../routing/page-link.js';
import { useAddress } from '../routing/location.js';
import { OutcomeList } from '../sends/outcome-list.js';
import { useSends } from '../sends/sends.js';
import { ROLE_WORDS } from '../session/role-words.js';
import { useSession, useSignedIn } from '../session/session.js';
import { dayWords } from '../time/moment-words.js';
import { hearServiceClock, serviceNow } from '../time/service-clock.js';
import { daySections } from './day-sections.js';
import { pendingPhases } from './pending/pending-phases.js';
import { EmptyDay } from './empty-day.js';
import { PhaseCard } from './phase-card.js';
import { PhaseRow } from './phase-row.js';
import { SiteWeather } from './site-weather.js';
import { StatusStrip } from './status-strip.js';
import './site-page.css';

/** The service's clock is asked for with a stretch of no length to speak of: the sheet draws no board. */
const MOMENT = { from: '2000-01-01T00:00:00.000Z', to: '2000-01-01T00:15:00.000Z' };

/** The foreman's sheet on the phone: the day as a list, or one phase alone; with a signal or without. */
export function SitePage() {
  const { me, company } = useSignedIn();
  const { sends } = useSends();
  const { query } = useAddress();
  const { data, error, heardAt } = useQuery(TodayDocument, MOMENT, { keep: `today ${me.id}` });
  const answered = data?.board.now ?? null;
  useEffect(() => {
    if (answered && heardAt !== null) hearServiceClock(answered, heardAt);
  }, [answered, heardAt]);
  const { zone } = company;
  const now = answered && heardAt !== null ? Date.parse(answered) + Date.now() - heardAt : serviceNow();
  const phases = pendingPhases(data?.today ?? [], sends);
  const one = phases.find(({ id }) => id === query.get('phase'));
  return (
    <div className="site">
      <HatchDefinitions />
      {one ? <OneHead /> : <DayHead now={now} />}
      <StatusStrip seenAt={answered ? Date.parse(answered) : null} zone={zone} />
      <main>
        {error && !data && <p className="fault">{error.message}</p>}
        {!data && !error && <p>Asking for today's phases.</p>}
        {one && <PhaseCard phase={one} zone={zone} />}
        {!one && data && phases.length === 0 && <EmptyDay role={me.role} />}
        {!one &&
          data &&
          phases.length > 0 &&
          daySections(phases, now, zone).map(({ title, phases: listed }) => (
            <section key={title} aria-label={title}>
              <h2>{title}</h2>
              {listed.length === 0 && <p>Nothing planned.</p>}
              {listed.map((phase) => (
                <PhaseRow key={phase.id} phase={phase} zone={zone} />
              ))}
            </section>
          ))}
        {data && <SiteWeather phases={one ? [one] : phases} now={now} zone={zone} />}
      </main>
      <OutcomeList withoutWaiting />
    </div>
  );
}

function DayHead({ now }: { readonly now: number }) {
  const { me, company } = useSignedIn();
  const { signOut } = useSession();
  const { connected } = useLive();
  return (
    <header className="site-head">
      <h1>Site sheet</h1>
      <p>
        <b>{dayWords(now, company.zone)}</b> {company.name}. {me.name}, {ROLE_WORDS[me.role]}.
      </p>
      <p className="site-ways">
        <PageLink to="/" className="act">
          Board
        </PageLink>
        <button type="button" className="act" disabled={!connected} onClick={() => void signOut()}>
          Sign out
        </button>
      </p>
    </header>
  );
}

function OneHead() {
  return (
    <header className="site-head">
      <h1 className="heard">Site sheet: one phase</h1>
      <p className="site-ways">
        <PageLink to="/site" className="act">
          Back to the day
        </PageLink>
      </p>
    </header>
  );
}
