import { type BoardPhaseFragment, PhaseWeatherDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { WindowList } from './window-list.js';

interface PhaseWeatherProps {
  readonly phase: BoardPhaseFragment;
  readonly now: number;
  readonly zone: string;
}

const DAY_MS = 24 * 3_600_000;
/** The service answers for 92 days at most; what lies further on is unknown anyway. */
const MOST_DAYS = 60;

/** The weather that a phase to come meets where it is planned, under the protection that it takes. */
export function PhaseWeather({ phase, now, zone }: PhaseWeatherProps) {
  const { planned, weatherLimitKey, state } = phase;
  const from = planned ? Math.max(now, Date.parse(planned.startAt)) : now;
  const to = planned ? Date.parse(planned.finishAt) : now;
  const asks = Boolean(weatherLimitKey) && state !== 'done' && to > from && from < now + MOST_DAYS * DAY_MS;
  const end = Math.min(to, from + MOST_DAYS * DAY_MS);
  const { data, error } = useQuery(
    PhaseWeatherDocument,
    { phaseId: phase.id, from: new Date(from).toISOString(), to: new Date(end).toISOString() },
    { when: asks },
  );
  const windows = data?.phase?.weatherWindows;
  if (!asks || !windows) return error ? <p className="fault">{error.message}</p> : null;
  const { protection, name } = windows;
  return (
    <div>
      <h4>
        Weather for {name}
        {protection.length > 0 && `, with ${protection.join(' and ')}`}
      </h4>
      <WindowList
        windows={[windows]}
        from={from}
        to={end}
        zone={zone}
        none="No limit of it is broken while it is planned."
      />
    </div>
  );
}
