import type { RiskModel, WeatherRisk } from '../../../shared/schedule/risk/risk-model.js';
import type { ThreePoint } from '../../../shared/schedule/three-point.js';
import type { CompanyPlan } from '../input/company-plan.js';

/** How far work of a crew may come out from its planned length: common practice, no source. */
const SHORTEST = 0.85;
const LONGEST = 1.6;

/** Share of the scatter that a company's phases have in common, and those of one job: common practice, no source. */
const COMPANY_SHARE = 0.2;
const JOB_SHARE = 0.3;

/** Chance that a day's forecast is of no use, for each day ahead: common practice, no source. */
const ERROR_PER_DAY = 0.05;

/**
 * Chances of a lost day after a good one and after a lost one, by month from January, for a cold northern place. No source: a company with records
 * of its own days knows better.
 */
const MONTHS = [
  [0.25, 0.6],
  [0.25, 0.6],
  [0.2, 0.5],
  [0.15, 0.4],
  [0.12, 0.35],
  [0.1, 0.3],
  [0.1, 0.3],
  [0.1, 0.3],
  [0.1, 0.3],
  [0.12, 0.35],
  [0.15, 0.45],
  [0.25, 0.6],
].map(([lostAfterGood = 0, lostAfterLost = 0]) => ({ lostAfterGood, lostAfterLost }));

const SLOTS_A_DAY = 96;
const DAY_MS = 24 * 60 * 60_000;

/** What every answer about risk says of where its chances come from. */
export const ASSUMPTIONS: readonly string[] = [
  `A crew's work takes between ${SHORTEST * 100} and ${LONGEST * 100} % of its planned time; waits take theirs. Common practice, no source.`,
  'Crews keep the order of today’s plan; nobody re-decides with hindsight.',
  `The forecast counts as far as it goes, each day ahead with ${ERROR_PER_DAY * 100} % more chance of being of no use; after it days are lost by the month, more often after a lost day. Chances of a cold northern place, no source.`,
  'An estimate for deciding, never leave to start: hold points and limits on site decide that.',
];

/** What is uncertain in a company's plan. */
export function riskModelOf({ planned, frame }: CompanyPlan): RiskModel {
  const durations: Record<string, ThreePoint> = {};
  for (const { id, duration, facts } of planned.phases)
    if (duration.kind === 'work' && duration.slots > 0 && facts?.actualStart === undefined)
      durations[id] = {
        optimistic: duration.slots * SHORTEST,
        likely: duration.slots,
        pessimistic: duration.slots * LONGEST,
      };
  return { durations, companyShare: COMPANY_SHARE, jobShare: JOB_SHARE, weather: weatherOf(planned, frame) };
}

function weatherOf(
  { weather, now }: CompanyPlan['planned'],
  { startMs, days }: CompanyPlan['frame'],
): WeatherRisk {
  const unknown = weather.flatMap(({ holds }) => holds.filter(({ cause }) => cause.kind === 'unknown'));
  const forecastUntil = unknown.reduce(
    (first, { from }) => (from < first ? from : first),
    unknown[0]?.from ?? now,
  );
  return {
    forecastUntil,
    // The horizon begins at a midnight UTC; days of weather need not be those of the calendar.
    firstDay: 0 as WeatherRisk['firstDay'],
    day: SLOTS_A_DAY,
    errorPerDay: ERROR_PER_DAY,
    beyond: {
      kind: 'chain',
      months: MONTHS,
      monthOfDay: Array.from({ length: days }, (_, day) => new Date(startMs + day * DAY_MS).getUTCMonth()),
    },
  };
}
