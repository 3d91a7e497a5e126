import { HatchBand } from '../draw/hatch-band.js';
import { PageLink } from '../routing/page-link.js';
import { stretchWords } from '../time/moment-words.js';
import { phaseTitle, stateWords } from '../words/phase-words.js';
import { InTheWay } from './in-the-way.js';
import type { PendingPhase } from './pending/pending-phases.js';
import { mayRun, StartFinish } from './start-finish.js';
import { useSignedIn } from '../session/session.js';
import './phase-card.css';

interface PhaseRowProps {
  readonly phase: PendingPhase;
  readonly zone: string;
}

/** One phase of the day: the whole row opens it; what nothing stands in the way of is one press away. */
export function PhaseRow({ phase, zone }: PhaseRowProps) {
  const { me } = useSignedIn();
  const { planned, job } = phase;
  const title = phaseTitle(phase);
  const clear = phase.obstacles.length === 0 && phase.state !== 'done' && phase.durationKind === 'work';
  return (
    <article className="phase-card" aria-label={`${job.number} ${title}`}>
      <HatchBand hatch={phase.hatch} wait={phase.durationKind === 'elapsed'} />
      <div className="phase-words">
        <PageLink to={`/site?phase=${phase.id}`} className="phase-open">
          <h3>{title}</h3>
          <p>
            {job.number} {job.name}, {job.site.address}
          </p>
        </PageLink>
        <p>
          {stateWords(phase)}
          {phase.pending && ', not sent yet'}
          {planned && `, ${stretchWords(Date.parse(planned.startAt), Date.parse(planned.finishAt), zone)}`}
          {planned?.weatherUnknown && ', weather unknown'}
        </p>
        <InTheWay phase={phase} />
        {clear && mayRun(me.role) && <StartFinish phase={phase} />}
      </div>
    </article>
  );
}
