import type { OwnerWeekQuery } from '../api/documents.js';
import { dateWords } from './date-words.js';

type Day = OwnerWeekQuery['ownerWeek']['days'][number];

/** One day: what happens, what to keep clear, and why the weather keeps work waiting. */
export function OwnerDayBlock({ day, today }: { readonly day: Day; readonly today: boolean }) {
  const empty = day.lines.length === 0;
  return (
    <li className={empty ? 'owner-day owner-quiet' : 'owner-day'}>
      <h3>
        <time dateTime={day.date}>{dateWords(day.date)}</time>
        {today && ' (today)'}
      </h3>
      {empty && <p>No work.</p>}
      {!empty && (
        <ul>
          {day.lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      {day.weather.map((line) => (
        <p key={line} className="owner-weather">
          {line}
        </p>
      ))}
      {day.keepClear.length > 0 && (
        <div className="owner-clear">
          <b>Please</b>
          <ul>
            {day.keepClear.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      )}
    </li>
  );
}
