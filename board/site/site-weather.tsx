import { useState } from 'react';
import { useSends } from '../sends/sends.js';
import { useSignedIn } from '../session/session.js';
import { isoWords } from '../time/moment-words.js';
import { addDays, dateAt, momentAt } from '../time/zone-days.js';
import { pressedAt } from '../time/service-clock.js';
import type { SitePhase } from './day-sections.js';
import { isPendingHold } from './pending/pending-holds.js';
import './site-weather.css';

type SiteOfPhase = SitePhase['job']['site'];

interface SiteWeatherProps {
  readonly phases: readonly SitePhase[];
  readonly now: number;
  readonly zone: string;
}

/** Weather holds of the sites in hand: those in force, and calling one in two touches. */
export function SiteWeather({ phases, now, zone }: SiteWeatherProps) {
  const { me } = useSignedIn();
  const sites = [...new Map(phases.map(({ job }) => [job.site.id, job.site])).values()];
  if (sites.length === 0) return null;
  const may = me.role === 'office' || me.role === 'foreman';
  return (
    <section aria-label="Weather holds">
      <h2>Weather</h2>
      {sites.map((site) => (
        <div key={site.id} className="cell site-weather">
          <h3>{site.address}</h3>
          {site.weatherHolds.length === 0 && <p>No weather hold.</p>}
          {site.weatherHolds.map((hold) => (
            <HoldLine key={hold.id} hold={hold} zone={zone} may={may} />
          ))}
          {may && <CallHold site={site} now={now} zone={zone} />}
        </div>
      ))}
    </section>
  );
}

interface HoldLineProps {
  readonly hold: SiteOfPhase['weatherHolds'][number];
  readonly zone: string;
  readonly may: boolean;
}

function HoldLine({ hold, zone, may }: HoldLineProps) {
  const { send } = useSends();
  return (
    <div className="hold-line">
      <p>
        <b>{hold.cause === 'called' ? 'Called' : 'By forecast'}</b>
        {hold.phase ? ' for one phase' : ''}: {hold.reason}. {isoWords(hold.startsAt, zone)} to{' '}
        {isoWords(hold.endsAt, zone, 'until it is lifted')}.
      </p>
      {isPendingHold(hold) && <p>Not sent yet.</p>}
      {may && hold.cause === 'called' && !isPendingHold(hold) && (
        <button
          type="button"
          className="act act-large"
          onClick={() =>
            void send('liftWeatherHold', `Lift the weather hold: ${hold.reason}`, {
              weatherHoldId: hold.id,
              revision: hold.revision,
              reason: 'The weather allows work again',
            })
          }
        >
          Lift this hold
        </button>
      )}
    </div>
  );
}

const CAUSES = ['Rain', 'Wind', 'Too cold', 'Snow or ice'] as const;

/** First touch opens the causes, second touch calls the hold for the rest of the day or until it is lifted. */
function CallHold({
  site,
  now,
  zone,
}: {
  readonly site: SiteOfPhase;
  readonly now: number;
  readonly zone: string;
}) {
  const { send } = useSends();
  const [open, setOpen] = useState(false);
  const call = (cause: string, endsAt: string | null) => {
    setOpen(false);
    const until = endsAt ? 'for the rest of the day' : 'until it is lifted';
    void send('callWeatherHold', `Weather hold at ${site.address}: ${cause}, ${until}`, {
      siteId: site.id,
      reason: cause,
      startsAt: pressedAt(),
      endsAt,
    });
  };
  const midnight = new Date(momentAt(addDays(dateAt(now, zone), 1), 0, zone)).toISOString();
  return (
    <>
      <button type="button" className="act act-large" aria-expanded={open} onClick={() => setOpen(!open)}>
        Call a weather hold
      </button>
      {open && (
        <div className="hold-causes">
          {CAUSES.map((cause) => (
            <div key={cause} className="two-acts">
              <button type="button" className="act act-large" onClick={() => call(cause, midnight)}>
                {cause}, rest of today
              </button>
              <button type="button" className="act act-large" onClick={() => call(cause, null)}>
                {cause}, until lifted
              </button>
            </div>
          ))}
        </div>
      )}
    </>
  );
}
