import { useMemo, useState } from 'react';
import { delay, lostDay } from '../../shared/schedule/what-if/scenarios.js';
import type { Change } from '../../shared/schedule/change.js';
import type { PlanInput } from '../../shared/schedule/model.js';
import { Planner } from '../../shared/schedule/planner.js';
import { slot } from '../../shared/schedule/slot.js';
import { whatIf, type WhatIf } from '../../shared/schedule/what-if/what-if.js';
import { type BoardPhaseFragment, PlanInputDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import type { BoardData } from '../board/layout/rows.js';
import { dayWords } from '../time/moment-words.js';
import { shiftWords } from './shift-words.js';

interface TryBlockProps {
  readonly board: BoardData;
  /** The phase in focus on the board. */
  readonly phase: BoardPhaseFragment | null;
  readonly zone: string;
}

const HOUR = 3_600_000;

/** Tries a change with the engine itself, in the page: every job's end at once, and nothing is written. */
export function TryBlock({ board, phase, zone }: TryBlockProps) {
  const { data, error } = useQuery(PlanInputDocument, {});
  const handed = data?.planInput ?? null;
  const planner = useMemo(
    () => (handed?.json ? Planner.of(JSON.parse(handed.json) as PlanInput) : null),
    [handed?.json],
  );
  const [chosen, setChosen] = useState<BoardPhaseFragment | null>(null);
  const [hours, setHours] = useState(8);
  const [tried, setTried] = useState<{ readonly words: string; readonly changes: readonly Change[] } | null>(
    null,
  );
  const found = useMemo(() => (planner && tried ? preview(planner, tried.changes) : null), [planner, tried]);
  const subject = phase ?? chosen;
  if (phase && phase !== chosen) setChosen(phase);
  const slots = (milliseconds: number) => Math.ceil(milliseconds / ((handed?.slotMinutes ?? 15) * 60_000));
  const today = handed ? slots(Date.parse(board.now) - Date.parse(handed.startsAt)) : 0;
  return (
    <section className="block try" aria-label="What if" tabIndex={0}>
      <h2 className="caption">What if</h2>
      {error && <p className="fault">{error.message}</p>}
      {handed && !handed.json && <p>There is too much planned to try changes in the page.</p>}
      {planner && (
        <>
          <p>{subject ? `${subject.job.number} ${subject.name}` : 'Point at a bar to try a longer phase.'}</p>
          <p className="try-form">
            <label>
              Hours{' '}
              <input
                type="number"
                min={1}
                max={720}
                value={hours}
                onChange={(event) => setHours(event.target.valueAsNumber)}
              />
            </label>
            <button
              type="button"
              className="act"
              disabled={!subject || !(hours >= 1 && hours <= 720)}
              onClick={() =>
                subject &&
                setTried({
                  words: `${subject.job.number} ${subject.name} takes ${hours} h longer`,
                  changes: delay(subject.id, slots(hours * HOUR)),
                })
              }
            >
              it takes so much longer
            </button>
            <button
              type="button"
              className="act"
              disabled={!(hours >= 1 && hours <= 720)}
              onClick={() =>
                setTried({
                  words: `nobody works for ${hours} h from now`,
                  changes: lostDay(slot(today), slot(today + slots(hours * HOUR))),
                })
              }
            >
              nobody works so long
            </button>
            <button type="button" className="act" disabled={!tried} onClick={() => setTried(null)}>
              as it is
            </button>
          </p>
        </>
      )}
      <div role="status">
        {found === 'gone' && <p>That phase is no longer planned. Choose another.</p>}
        {found && found !== 'gone' && handed && (
          <Found
            found={found}
            words={tried?.words ?? ''}
            board={board}
            startsAt={handed.startsAt}
            slotMinutes={handed.slotMinutes}
            zone={zone}
          />
        )}
      </div>
    </section>
  );
}

/** The plan may have gone on since the change was chosen, and what it names with it. */
function preview(planner: Planner, changes: readonly Change[]): WhatIf | 'gone' {
  try {
    return whatIf(planner, changes);
  } catch (error) {
    if (error instanceof RangeError) return 'gone';
    throw error;
  }
}

interface FoundProps {
  readonly found: WhatIf;
  readonly words: string;
  readonly board: BoardData;
  readonly startsAt: string;
  readonly slotMinutes: number;
  readonly zone: string;
}

function Found({ found, words, board, startsAt, slotMinutes, zone }: FoundProps) {
  const jobs = new Map(board.jobs.map((job) => [job.id, job]));
  const day = (at: number | null) =>
    at === null ? 'no end' : dayWords(Date.parse(startsAt) + at * slotMinutes * 60_000, zone);
  const moved = found.phases.length;
  return (
    <>
      <p>
        If {words}: {moved} {moved === 1 ? 'phase moves' : 'phases move'}, {found.conflicts.added.length}{' '}
        conflicts come, {found.conflicts.removed.length} go. Nothing is written.
      </p>
      <table>
        <caption>Every job</caption>
        <thead>
          <tr>
            <th scope="col">Job</th>
            <th scope="col">Ends</th>
            <th scope="col">Would end</th>
            <th scope="col">Difference</th>
          </tr>
        </thead>
        <tbody>
          {found.jobs.map(({ jobId, finishBefore, finishAfter, shift, dueMissedBefore, dueMissedAfter }) => (
            <tr key={jobId}>
              <th scope="row">
                {jobs.has(jobId) ? `${jobs.get(jobId)?.number} ${jobs.get(jobId)?.name}` : 'a job not shown'}
              </th>
              <td>{day(finishBefore)}</td>
              <td>{day(finishAfter)}</td>
              <td>
                {shiftWords(shift === null ? null : shift * slotMinutes)}
                {dueMissedAfter && !dueMissedBefore && ', due date missed'}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
