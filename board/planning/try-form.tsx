import { useState } from 'react';
import type { PlanInput } from '../../shared/schedule/model.js';
import { delay, extraCrew, lostDay } from '../../shared/schedule/what-if/scenarios.js';
import { slot } from '../../shared/schedule/slot.js';
import type { BoardPhaseFragment } from '../api/documents.js';
import type { BoardData } from '../board/layout/rows.js';
import type { Tried } from './try-block.js';

interface TryFormProps {
  readonly board: BoardData;
  readonly planned: PlanInput;
  readonly subject: BoardPhaseFragment | null;
  /** Slots of so many hours. */
  readonly slotsOf: (hours: number) => number;
  /** The slot that has begun. */
  readonly today: number;
  readonly tried: Tried | null;
  readonly onTry: (tried: Tried | null) => void;
}

const MOST_HOURS = 720;

/** What can be tried: on the phase in focus, on a crew, on everybody. */
export function TryForm({ board, planned, subject, slotsOf, today, tried, onTry }: TryFormProps) {
  const [hours, setHours] = useState(8);
  const [crewId, setCrewId] = useState('');
  const crews = board.crews.filter(({ id }) => planned.crews.some((crew) => crew.id === id));
  const crew = crews.find(({ id }) => id === crewId) ?? crews[0];
  const calendarId = planned.crews.find(({ id }) => id === crew?.id)?.calendarId;
  const countable = hours >= 1 && hours <= MOST_HOURS;
  const held = planned.phases.find(({ id }) => id === subject?.id)?.holds ?? [];
  const named = subject ? `${subject.job.number} ${subject.name}` : '';
  const lost = (calendar?: string) => lostDay(slot(today), slot(today + slotsOf(hours)), calendar);
  return (
    <>
      <p>{subject ? named : 'Point at a bar to try something with its phase.'}</p>
      <p className="try-form">
        <label>
          Hours{' '}
          <input
            type="number"
            min={1}
            max={MOST_HOURS}
            value={hours}
            onChange={(event) => setHours(event.target.valueAsNumber)}
          />
        </label>
        <button
          type="button"
          className="act"
          disabled={!subject || !countable}
          onClick={() =>
            subject &&
            onTry({ words: `${named} takes ${hours} h longer`, changes: delay(subject.id, slotsOf(hours)) })
          }
        >
          it takes so much longer
        </button>
        <button
          type="button"
          className="act"
          disabled={!countable}
          onClick={() => onTry({ words: `nobody works for ${hours} h from now`, changes: lost() })}
        >
          nobody works so long
        </button>
        <button
          type="button"
          className="act"
          disabled={!subject || held.length === 0}
          onClick={() => subject && onTry({ words: `${named} goes without protection`, bare: subject.id })}
        >
          it goes without protection
        </button>
      </p>
      <p className="try-form">
        {crew && (
          <>
            <label>
              Crew{' '}
              <select value={crew.id} onChange={(event) => setCrewId(event.target.value)}>
                {crews.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
            <button
              type="button"
              className="act"
              onClick={() =>
                onTry({
                  words: `there is one more crew like ${crew.name}`,
                  changes: extraCrew(planned, crew.id),
                })
              }
            >
              one more like it
            </button>
            <button
              type="button"
              className="act"
              disabled={!countable || calendarId === undefined}
              onClick={() =>
                onTry({ words: `${crew.name} is away for ${hours} h from now`, changes: lost(calendarId) })
              }
            >
              it is away so long
            </button>
          </>
        )}
        <button type="button" className="act" disabled={!tried} onClick={() => onTry(null)}>
          as it is
        </button>
      </p>
    </>
  );
}
