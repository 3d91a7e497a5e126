import { TodayDocument } from '../api/documents.js';
import { useLive } from '../api/live.js';
import { useQuery } from '../api/use-query.js';
import { HatchDefinitions } from '../draw/hatches.js';
import { PageLink } from '../routing/page-link.js';
import { OutcomeList } from '../sends/outcome-list.js';
import { ROLE_WORDS } from '../session/role-words.js';
import { useSession, useSignedIn } from '../session/session.js';
import { dayWords } from '../time/moment-words.js';
import { daySections } from './day-sections.js';
import { PhaseCard } from './phase-card.js';
import { SiteWeather } from './site-weather.js';
import './site-page.css';

/** The service's clock is asked for with a stretch of no length to speak of: the sheet draws no board. */
const MOMENT = { from: '2000-01-01T00:00:00.000Z', to: '2000-01-01T00:15:00.000Z' };

/** The foreman's sheet on the phone: today and tomorrow, what stands in the way, and what to press. */
export function SitePage() {
  const { me, company } = useSignedIn();
  const { signOut } = useSession();
  const { connected } = useLive();
  const { data, error } = useQuery(TodayDocument, MOMENT);
  const now = data ? Date.parse(data.board.now) : null;
  const sections = data && now !== null ? daySections(data.today, now, company.zone) : [];
  return (
    <div className="site">
      <HatchDefinitions />
      <header className="site-head">
        <h1>Site sheet</h1>
        <p>
          {now !== null && <b>{dayWords(now, company.zone)}</b>} {company.name}. {me.name},{' '}
          {ROLE_WORDS[me.role]}. <span role="status">{connected ? 'Live.' : 'Not connected.'}</span>
        </p>
        <p className="site-ways">
          <PageLink to="/" className="act">
            Board
          </PageLink>
          <button type="button" className="act" onClick={() => void signOut()}>
            Sign out
          </button>
        </p>
      </header>
      <main>
        {error && <p className="fault">{error.message}</p>}
        {!data && !error && <p>Asking for today's phases.</p>}
        {sections.map(({ title, phases }) => (
          <section key={title} aria-label={title}>
            <h2>{title}</h2>
            {phases.length === 0 && <p>Nothing planned.</p>}
            {phases.map((phase) => (
              <PhaseCard key={phase.id} phase={phase} zone={company.zone} />
            ))}
          </section>
        ))}
        {data && now !== null && <SiteWeather phases={data.today} now={now} zone={company.zone} />}
      </main>
      <OutcomeList />
    </div>
  );
}
