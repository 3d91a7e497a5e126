import { HatchSwatch } from '../draw/hatches.js';
import { isoWords } from '../time/moment-words.js';
import { phaseTitle, stateWords } from '../words/phase-words.js';
import type { JobOfPage } from './job-types.js';
import { Sheet } from './sheet.js';

/** The phases in the order of the job, with dates as they happened or as planned, and why. */
export function PhaseTable({
  phases,
  zone,
}: {
  readonly phases: JobOfPage['phases'];
  readonly zone: string;
}) {
  return (
    <Sheet
      title="Phases"
      heads={['', 'Phase', 'State', 'Start', 'Finish', 'Crew', 'Committed start', 'Reason']}
    >
      {[...phases]
        .sort((a, b) => a.position - b.position)
        .map((phase) => (
          <tr key={phase.id} className={`phase-${phase.state}`}>
            <td>
              <HatchSwatch hatch={phase.hatch} wait={phase.durationKind === 'elapsed'} />
            </td>
            <th scope="row">{phaseTitle(phase)}</th>
            <td>{stateWords(phase)}</td>
            <td>{isoWords(phase.actualStart ?? phase.planned?.startAt, zone, 'not planned')}</td>
            <td>{isoWords(phase.actualFinish ?? phase.planned?.finishAt, zone, 'not planned')}</td>
            <td>{(phase.actualCrew ?? phase.planned?.crew)?.name ?? 'none'}</td>
            <td>{phase.commitment ? isoWords(phase.commitment.startAt, zone) : 'none'}</td>
            <td>
              {phase.note && <b>{phase.note} </b>}
              {phase.state === 'done' ? '' : phase.planned?.reason.text}
              {phase.planned?.weatherUnknown && phase.state === 'waiting' && ' Weather unknown.'}
            </td>
          </tr>
        ))}
    </Sheet>
  );
}
