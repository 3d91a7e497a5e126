import { AlarmList } from '../cure/alarm-list.js';
import { PlacementForm, places } from '../cure/placement-form.js';
import { HatchBand } from '../draw/hatch-band.js';
import { PageLink } from '../routing/page-link.js';
import { ROLE_WORDS } from '../session/role-words.js';
import { useSends } from '../sends/sends.js';
import { useSignedIn } from '../session/session.js';
import { stretchWords } from '../time/moment-words.js';
import { phaseTitle, stateWords } from '../words/phase-words.js';
import { CardWeather } from './card-weather.js';
import type { SitePhase } from './day-sections.js';
import { HoldPointSheet } from './hold-point-sheet.js';
import './phase-card.css';

interface PhaseCardProps {
  readonly phase: SitePhase;
  readonly zone: string;
}

/** One phase: when and where, what stands in the way and who lifts it, and the two large buttons. */
export function PhaseCard({ phase, zone }: PhaseCardProps) {
  const { me } = useSignedIn();
  const { planned, job } = phase;
  const open = phase.holdPoints.filter(({ state }) => state === 'open' || state === 'refused');
  const title = phaseTitle(phase);
  return (
    <article className="phase-card" aria-label={`${job.number} ${title}`}>
      <HatchBand hatch={phase.hatch} wait={phase.durationKind === 'elapsed'} />
      <div className="phase-words">
        <h3>{title}</h3>
        <p>
          <PageLink to={`/jobs/${job.number}`}>
            {job.number} {job.name}
          </PageLink>
          , {job.site.address}
        </p>
        <p>
          {stateWords(phase)}
          {planned && `, ${stretchWords(Date.parse(planned.startAt), Date.parse(planned.finishAt), zone)}`}
          {planned?.crew && `, ${planned.crew.name}`}
          {planned?.weatherUnknown && ', weather unknown'}
        </p>
        {phase.obstacles.length > 0 && (
          <div className="in-the-way">
            <h4>In the way of {phase.state === 'started' ? 'finishing' : 'starting'}</h4>
            <ul>
              {phase.obstacles.map(({ code, message, liftedBy }, index) => (
                <li key={`${code}-${index}`}>
                  {message}{' '}
                  {liftedBy && <b>Lifted by: {liftedBy === me.role ? 'you' : ROLE_WORDS[liftedBy]}.</b>}
                </li>
              ))}
            </ul>
          </div>
        )}
        {phase.state === 'waiting' && phase.weatherWindows && planned && (
          <CardWeather windows={phase.weatherWindows} planned={planned} zone={zone} />
        )}
        <AlarmList
          alarms={job.placements.flatMap((placement) =>
            placement.phase.id === phase.id ? placement.alarms : [],
          )}
          zone={zone}
        />
        {phase.durationKind === 'elapsed' && <p>Starts and ends by itself.</p>}
        {may(me.role) && phase.durationKind === 'work' && (
          <StartFinish phase={phase} title={`${job.number} ${title}`} />
        )}
        {may(me.role) && phase.state === 'started' && phase.durationKind === 'work' && places(phase) && (
          <PlacementForm phase={phase} />
        )}
        {may(me.role) &&
          open.map((holdPoint) => <HoldPointSheet key={holdPoint.id} holdPoint={holdPoint} phase={phase} />)}
      </div>
    </article>
  );
}

/** Who may run phases. */
const may = (role: string): boolean => role === 'office' || role === 'foreman';

function StartFinish({ phase, title }: { readonly phase: SitePhase; readonly title: string }) {
  const { sends, send } = useSends();
  const busy = sends.some(({ state, input }) => state === 'sending' && input['phaseId'] === phase.id);
  const row = { phaseId: phase.id, revision: phase.revision };
  if (phase.state === 'started') {
    return (
      <button
        type="button"
        className="act act-strong act-large"
        disabled={busy}
        onClick={() => void send('finishPhase', `Finish ${title}`, row)}
      >
        Finish
      </button>
    );
  }
  return (
    <button
      type="button"
      className="act act-strong act-large"
      disabled={busy}
      onClick={() => void send('startPhase', `Start ${title}`, row)}
    >
      Start
    </button>
  );
}
