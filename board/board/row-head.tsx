import { PageLink } from '../routing/page-link.js';
import { dayWords, stretchWords } from '../time/moment-words.js';
import type { SiteWeather } from '../weather/site-weather.js';
import { ageWords, forecastWords } from '../weather/words/forecast-words.js';
import type { HoldStretch } from './layout/hold-stretches.js';
import type { BoardData, BoardRow } from './layout/rows.js';
import { visitTime } from './layout/visit-time.js';
import { visitWords } from './words/visit-words.js';

interface RowHeadProps {
  readonly row: BoardRow;
  /** The weather of its site; null where the row is a crew, or while it is asked for. */
  readonly site: SiteWeather | null;
  readonly holds: readonly HoldStretch[];
  readonly visits: BoardData['inspections'];
  readonly now: number;
  readonly zone: string;
}

/** The head of a row; what the drawing shows beside the bars is said here to those who hear it. */
export function RowHead({ row, site, holds, visits, now, zone }: RowHeadProps) {
  const { job } = row;
  const finish = job?.committedFinish ?? job?.plannedFinish;
  return (
    <div role="rowheader" className="row-head">
      {job && <span className="row-number">{job.number}</span>}
      <span className="row-words">
        <span className="row-title">
          {job ? <PageLink to={`/jobs/${job.number}`}>{row.title}</PageLink> : row.title}
        </span>
        <span className="row-note">{row.note}</span>
        {job && finish && (
          <span className="row-note">
            {job.committedFinish ? 'committed to ' : 'planned to '}
            {dayWords(Date.parse(finish), zone)}
          </span>
        )}
        {site && (
          <span className="row-note">
            {site.forecast ? `forecast ${ageWords(site.forecast.issuedAt, now)}` : 'no forecast'}
          </span>
        )}
      </span>
      <span className="heard">
        {site && `${forecastWords(site.forecast, now, zone)}. `}
        {[...new Set(holds.map(({ hold }) => holdWords(hold, zone)))].join('. ')}
        {visits
          .filter((visit) => visitTime(visit))
          .map((visit) => `. ${visitWords(visit, zone)}`)
          .join('')}
      </span>
    </div>
  );
}

function holdWords(hold: HoldStretch['hold'], zone: string): string {
  const from = Date.parse(hold.startsAt);
  const stretch = hold.endsAt
    ? stretchWords(from, Date.parse(hold.endsAt), zone)
    : `from ${dayWords(from, zone)} until it is lifted`;
  return `Weather hold, ${hold.cause === 'called' ? 'called' : 'by forecast'}, ${stretch}: ${hold.reason}`;
}
