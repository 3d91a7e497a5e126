import { dayWords, momentWords } from '../time/moment-words.js';
import type { Day } from '../time/zone-days.js';
import { dayWeather, forecastEnd } from './layout/day-weather.js';
import type { SiteWeather } from './site-weather.js';
import { WindowList } from './window-list.js';
import { forecastWords } from './words/forecast-words.js';
import { skyWords } from './words/sky-words.js';

interface DayDetailProps {
  readonly job: { readonly number: number; readonly name: string };
  readonly site: SiteWeather;
  readonly day: Day;
  readonly now: number;
  readonly zone: string;
}

/** The weather of a day over a job: what is forecast, from where, and what it closes and asks for. */
export function DayDetail({ job, site, day, now, zone }: DayDetailProps) {
  const { forecast, weatherWindows = [] } = site;
  const weather = dayWeather(forecast, [day]).get(day.date);
  const end = forecastEnd(forecast);
  return (
    <div className="detail-columns">
      <div>
        <h3 className="detail-title">
          {job.number} {job.name}: weather of {dayWords(day.start, zone)}
        </h3>
        <dl className="facts">
          <div>
            <dt>Forecast</dt>
            <dd>{weather ? skyWords(weather) : 'unknown, which is not fair'}</dd>
          </div>
          <div>
            <dt>Source</dt>
            <dd>
              {forecastWords(forecast, now, zone)}.{' '}
              {end !== null && `It reaches to ${momentWords(end, zone)}.`}
            </dd>
          </div>
        </dl>
      </div>
      <div id="detail-weather">
        <h3>Work of this job in that weather, without protection</h3>
        {weather ? (
          <WindowList
            windows={weatherWindows ?? []}
            from={Math.max(day.start, Math.floor(now / 3_600_000) * 3_600_000)}
            to={day.end}
            zone={zone}
            none="No limit of its work to come is broken."
          />
        ) : (
          <p>The forecast does not reach that far. What is planned there may have to move.</p>
        )}
      </div>
    </div>
  );
}
