import { PageLink } from '../routing/page-link.js';
import { useSends } from '../sends/sends.js';
import { useSignedIn } from '../session/session.js';
import { momentWords } from '../time/moment-words.js';
import { WorkingNote } from '../working/working-note.js';
import type { JobOfPage } from './job-types.js';
import { promisedDates } from './promised-dates.js';
import { useSince } from './use-since.js';

/** The dates that committing the job would promise, and the way to promise them. From then on they do not move by themselves. */
export function CommitBlock({ job, zone }: { readonly job: JobOfPage; readonly zone: string }) {
  const { me } = useSignedIn();
  const { sends, send } = useSends();
  const dates = promisedDates(job);
  const busy = sends.some(({ state, change }) => state === 'sending' && change === 'commitJob');
  const since = useSince(busy);
  if (me.role !== 'office' || !dates || job.state === 'cancelled') return null;
  const { from, to, phases, unplanned, weatherUnknown, daysLate } = dates;
  return (
    <section className="cell job-commit" aria-label="Dates to commit">
      <h2>Planned, not committed</h2>
      {from !== null && to !== null ? (
        <p>
          Committing promises {phases} {phases === 1 ? 'phase' : 'phases'}: work begins{' '}
          <b>{momentWords(from, zone)}</b> and the last ends <b>{momentWords(to, zone)}</b>. Each date stands
          in the table of phases below, with its reason.
        </p>
      ) : (
        <p className="fault">
          The plan has no place yet for {unplanned.join(', ')}. The notes on the{' '}
          <PageLink to="/">board</PageLink> say what is missing: most often a crew of that trade. Then commit.
        </p>
      )}
      {daysLate > 0 && (
        <p className="fault">
          That is {daysLate} {daysLate === 1 ? 'day' : 'days'} after the promised end. Serve the job earlier,
          or promise another end.
        </p>
      )}
      {weatherUnknown > 0 && (
        <p>
          For {weatherUnknown} of them the weather is unknown: they lie past the forecast, or the site has
          none.
        </p>
      )}
      <p>
        <button
          type="button"
          className="act act-strong"
          disabled={busy || unplanned.length > 0}
          onClick={() =>
            void send('commitJob', `Commit the planned dates of job ${job.number}`, { jobId: job.id })
          }
        >
          Commit the planned dates
        </button>{' '}
        Committed dates are told to people and do not move by themselves.
      </p>
      <WorkingNote since={since}>Committing the dates and planning all jobs.</WorkingNote>
    </section>
  );
}
