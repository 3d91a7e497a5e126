import { AlarmList } from '../cure/alarm-list.js';
import { PlacementForm, places } from '../cure/placement-form.js';
import { HatchBand } from '../draw/hatch-band.js';
import { PhasePhotos } from '../photos/phase-photos.js';
import { PageLink } from '../routing/page-link.js';
import { useSignedIn } from '../session/session.js';
import { stretchWords } from '../time/moment-words.js';
import { phaseTitle, stateWords } from '../words/phase-words.js';
import { CardWeather } from './card-weather.js';
import { HoldPointSheet } from './hold-point-sheet.js';
import { InTheWay } from './in-the-way.js';
import { LeftForm } from './left-form.js';
import { NoteForm } from './note-form.js';
import type { PendingPhase } from './pending/pending-phases.js';
import { mayRun, StartFinish } from './start-finish.js';
import './phase-card.css';

interface PhaseCardProps {
  readonly phase: PendingPhase;
  readonly zone: string;
}

/** One phase alone: when and where, what stands in the way and who lifts it, and everything that is entered for it. */
export function PhaseCard({ phase, zone }: PhaseCardProps) {
  const { me } = useSignedIn();
  const { planned, job } = phase;
  const open = phase.holdPoints.filter(({ state }) => state === 'open' || state === 'refused');
  const works = mayRun(me.role) && phase.durationKind === 'work';
  const title = phaseTitle(phase);
  return (
    <article className="phase-card" aria-label={`${job.number} ${title}`}>
      <HatchBand hatch={phase.hatch} wait={phase.durationKind === 'elapsed'} />
      <div className="phase-words">
        <h2 className="heard">Job {job.number}</h2>
        <h3>{title}</h3>
        <p>
          <PageLink to={`/jobs/${job.number}`}>
            {job.number} {job.name}
          </PageLink>
          , {job.site.address}
        </p>
        <p>
          {stateWords(phase)}
          {phase.pending && ', not sent yet'}
          {planned && `, ${stretchWords(Date.parse(planned.startAt), Date.parse(planned.finishAt), zone)}`}
          {planned?.crew && `, ${planned.crew.name}`}
          {planned?.weatherUnknown && ', weather unknown'}
        </p>
        <InTheWay phase={phase} />
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
        {works && phase.state !== 'done' && <StartFinish phase={phase} />}
        {works && phase.state === 'started' && places(phase) && <PlacementForm phase={phase} />}
        {mayRun(me.role) &&
          open.map((holdPoint) => <HoldPointSheet key={holdPoint.id} holdPoint={holdPoint} phase={phase} />)}
        {works && phase.state === 'started' && <LeftForm phase={phase} />}
        {me.role !== 'viewer' && <PhasePhotos phase={phase} zone={zone} />}
        {mayRun(me.role) && <NoteForm key={phase.note} phase={phase} />}
      </div>
    </article>
  );
}
