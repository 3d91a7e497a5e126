import { useState } from 'react';
import { PlanRiskDocument, type PlanRiskQuery } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { dayWords } from '../time/moment-words.js';
import { fanScale } from './fan-scale.js';

type JobRisk = PlanRiskQuery['planRisk']['jobs'][number];

const CAUSES: Readonly<Record<string, string>> = { durations: 'work that takes longer', weather: 'weather' };

/** How sure the dates are: asked for by a press, because it takes the service a moment. */
export function RiskBlock({ zone }: { readonly zone: string }) {
  const [asked, setAsked] = useState(false);
  return (
    <section className="block risk" aria-label="How sure" tabIndex={0}>
      <h2 className="caption">How sure</h2>
      {asked ? (
        <Answer zone={zone} />
      ) : (
        <p className="decide">
          <button type="button" className="act" onClick={() => setAsked(true)}>
            How sure are the dates?
          </button>
        </p>
      )}
    </section>
  );
}

function Answer({ zone }: { readonly zone: string }) {
  const { data, error } = useQuery(PlanRiskDocument, {});
  if (error) return <p className="fault">{error.message}</p>;
  if (!data) return <p role="status">Draws durations and weather.</p>;
  const { jobs, samples, assumptions } = data.planRisk;
  const day = (at: string | null) => (at ? dayWords(Date.parse(at), zone) : 'no end');
  return (
    <>
      <table>
        <caption>Ends by chance, from {samples} drawn plans</caption>
        <thead>
          <tr>
            <th scope="col">Job</th>
            <th scope="col">50 %</th>
            <th scope="col">80 %</th>
            <th scope="col">Due date kept</th>
            <th scope="col">Later by</th>
          </tr>
        </thead>
        <tbody>
          {jobs.map((risk, index) => (
            <tr key={risk.job?.id ?? index}>
              <th scope="row">
                {risk.job ? `${risk.job.number} ${risk.job.name}` : 'a job that is gone'}
                <Fan risk={risk} />
              </th>
              <td>{day(risk.half.at)}</td>
              <td>
                {day(risk.fourFifths.at)}
                {risk.fourFifths.low !== risk.fourFifths.high &&
                  ` (${day(risk.fourFifths.low)} to ${day(risk.fourFifths.high)})`}
              </td>
              <td>
                {risk.dueKept
                  ? `${whole(risk.dueKept.chance)} (${whole(risk.dueKept.low)} to ${whole(risk.dueKept.high)})`
                  : 'none'}
              </td>
              <td>
                {risk.causes
                  .filter(({ share }) => share > 0)
                  .map(({ source, share }) => `${CAUSES[source] ?? source} ${whole(share)}`)
                  .join(', ') || 'nothing'}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        In each line: thin from the 10 to the 90 % date, thick from 50 to 80 %, a circle for the plan, a
        crossed tick for the due date. In brackets: where the true value lies with 95 % confidence.
      </p>
      <ul>
        {assumptions.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </>
  );
}

/** The dates of one job as a line; the table beside it says the same in words. */
function Fan({ risk }: { readonly risk: JobRisk }) {
  const dates = risk.fan.flatMap(({ at }) => (at ? [Date.parse(at)] : []));
  const [planned, due] = [risk.planned, risk.job?.dueAt ?? null].map((at) => (at ? Date.parse(at) : null));
  const [half, fourFifths] = [risk.half.at, risk.fourFifths.at].map((at) => (at ? Date.parse(at) : null));
  const marks = [
    ...dates,
    ...[planned, due, half, fourFifths].filter((at) => at !== null && at !== undefined),
  ];
  if (marks.length === 0) return null;
  const scale = fanScale(marks);
  const x = (at: number) => 20 + scale(at) * 0.96;
  const [first, last] = [dates[0], dates.at(-1)];
  return (
    <svg className="risk-fan" viewBox="0 0 1000 60" preserveAspectRatio="none" aria-hidden="true">
      <g stroke="currentColor" fill="none" vectorEffect="non-scaling-stroke">
        {first !== undefined && last !== undefined && (
          <path d={`M${x(first)} 30H${x(last)}`} strokeWidth={4} />
        )}
        {typeof half === 'number' && typeof fourFifths === 'number' && (
          <path d={`M${x(half)} 30H${Math.max(x(fourFifths), x(half) + 4)}`} strokeWidth={24} />
        )}
        {typeof due === 'number' && (
          <path d={`M${x(due)} 4V56M${x(due) - 14} 12H${x(due) + 14}`} strokeWidth={5} />
        )}
        {typeof planned === 'number' && (
          <ellipse cx={x(planned)} cy={30} rx={10} ry={18} strokeWidth={5} fill="var(--paper-light)" />
        )}
      </g>
    </svg>
  );
}

const whole = (chance: number): string => `${Math.round(chance * 100)} %`;
