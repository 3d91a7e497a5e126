import type { PlanInput } from '../../shared/schedule/model.js';
import { Planner } from '../../shared/schedule/planner.js';
import { slot } from '../../shared/schedule/slot.js';
import { portfolio } from '../portfolio/portfolio.js';

/** The instant of slot 0 of the portfolio, and the length of a slot. */
const START = Date.UTC(2024, 0, 8, 5);
const SLOT_MS = 15 * 60_000;
const HOUR_MS = 3_600_000;
/** The plan is looked at on its thirtieth day at nine: work is under way in every corner of it. */
const NOW = START + 30 * 24 * HOUR_MS + 9 * HOUR_MS;

const HATCHES = ['earth', 'concrete', 'masonry', 'mesh', 'mortar', 'stone', 'sealant', 'electrical'];
const NAMES = ['Tear out', 'Dig', 'Block', 'Mesh', 'Pour', 'Cure', 'Lay cable', 'Test', 'Bed stone', 'Seal'];

interface Phase {
  readonly job: { readonly id: string };
  readonly from: number;
  readonly to: number;
}

/** What the page asks, by the name of the question. */
export type Answers = (question: string, variables: Readonly<Record<string, unknown>>) => object;

const iso = (moment: number): string => new Date(moment).toISOString();

/** Answers of a company with an invented portfolio, in the shapes that the API gives. */
export function answersOf(jobs: number): { readonly answers: Answers; readonly phases: number } {
  const { input, planner } = atNow(portfolio(jobs, { staggered: true }));
  const at = (of: number): number => START + of * SLOT_MS;
  const jobOf = (id: string) => ({ id, number: 101 + Number(id.slice(4)) });
  const phases = planner.plan.phases.flatMap((phase, index) => {
    if (phase.start === null || phase.finish === null) return [];
    const facts = input.phases[index];
    const [from, to] = [at(phase.start), at(phase.finish)];
    const crew = phase.crewId === null ? null : { id: phase.crewId, name: `Crew ${phase.crewId.slice(5)}` };
    const place = Number(phase.id.split('-')[1]);
    const gate = (end: string, kind: string) => ({
      id: `${phase.id} ${end}`,
      kind,
      gate: end,
      title: `Gate at ${end}`,
      state: 'open',
    });
    return [
      {
        id: phase.id,
        name: `${NAMES[place % NAMES.length]} ${place}`,
        hatch: HATCHES[place % HATCHES.length],
        trade: facts?.trade ?? null,
        position: place,
        durationKind: facts?.duration.kind === 'elapsed' ? 'elapsed' : 'work',
        state: 'waiting',
        weatherLimitKey: place % 3 === 0 ? null : 'stone',
        pinnedStart: null,
        actualStart: null,
        actualFinish: null,
        revision: 1,
        job: jobOf(phase.jobId),
        area: null,
        actualCrew: null,
        planned: {
          startAt: iso(from),
          finishAt: iso(to),
          totalFloatMinutes: 15 * (phase.totalFloat ?? 0),
          freeFloatMinutes: 15 * (phase.freeFloat ?? 0),
          critical: phase.critical,
          weatherUnknown: phase.weatherUnknown,
          crew,
          segments: [],
        },
        commitment:
          place % 2 === 0
            ? null
            : { id: `c ${phase.id}`, startAt: iso(from), finishAt: iso(to), state: 'held', crew },
        holdPoints: place % 3 === 0 ? [gate('start', 'check'), gate('finish', 'inspection')] : [],
        from,
        to,
      },
    ];
  });
  const boardJobs = input.jobs.map(({ id, priority }) => ({
    ...jobOf(id),
    name: `Entry ${id.slice(4)}`,
    state: 'running',
    priority,
    dueAt: null,
    plannedFinish: iso(at(planner.plan.jobs.find((job) => job.id === id)?.finish ?? 0)),
    committedFinish: null,
    site: {
      id: `site-${id.slice(4)}`,
      address: `${id.slice(4)} Alder Road`,
      town: 'Alder Bend',
      weatherHolds: [],
    },
  }));
  const json = JSON.stringify(input);
  const answers: Answers = (question, variables) => {
    switch (question) {
      case 'Session':
        return { me: { id: 'p', name: 'A. Planner', role: 'office', zone: 'America/New_York' } };
      case 'CompanyName':
        return { company: { id: 'c', name: 'Invented Entries', zone: 'America/New_York', freezeDays: 3 } };
      case 'Board':
        return { board: board(phases, boardJobs, input, variables) };
      case 'PlanInput':
        return { planInput: { planNumber: 1, startsAt: iso(START), slotMinutes: 15, json } };
      case 'BoardWeather':
        return { board: weather(boardJobs, variables) };
      case 'NewestMove':
        return { newestMove: null };
      case 'NewestImprovement':
        return { newestImprovement: null };
      case 'Reasons':
        return { explain: [] };
      case 'PhaseWeather':
        return { phase: null };
      default:
        return {};
    }
  };
  return { answers, phases: phases.length };
}

/** The portfolio as it is planned from the present on, with its plan as the plan before. */
function atNow(input: PlanInput) {
  const now = slot((NOW - START) / SLOT_MS);
  const first = Planner.of({ ...input, now }).plan;
  const stood = new Map(first.phases.map((phase) => [phase.id, phase]));
  const phases = input.phases.map((phase) => {
    const { start, crewId } = stood.get(phase.id) ?? { start: null, crewId: null };
    return start === null ? phase : { ...phase, previous: { start, crewId: crewId ?? undefined } };
  });
  const standing = { ...input, now, phases };
  return { input: standing, planner: Planner.of(standing) };
}

function board(
  phases: readonly Phase[],
  jobs: readonly object[],
  input: PlanInput,
  { from, to }: Readonly<Record<string, unknown>>,
) {
  const [first, end] = [Date.parse(String(from)), Date.parse(String(to))];
  return {
    from,
    to,
    planNumber: 1,
    changeNumber: '1',
    now: iso(NOW),
    jobs,
    phases: phases.filter((phase) => phase.to >= first && phase.from < end),
    crews: input.crews.map(({ id, trades }) => ({ id, name: `Crew ${id.slice(5)}`, trades })),
    inspections: [],
    conflicts: [],
    openProposal: null,
  };
}

/** Ten days of weather by the hour at every site, cold and wet enough to close work. */
function weather(
  jobs: readonly { readonly id: string }[],
  { from, to, jobIds }: Readonly<Record<string, unknown>>,
) {
  const hours = Array.from({ length: 240 }, (_, hour) => ({
    at: iso(NOW + hour * HOUR_MS),
    temperatureF: 34 + 12 * Math.sin(hour / 4),
    windMph: 6,
    gustMph: null,
    rainChance: 20,
    rainInches: hour % 31 === 0 ? 0.1 : 0,
  }));
  const closed = [3, 40, 90].map((hour) => ({
    from: iso(NOW + hour * HOUR_MS),
    to: iso(NOW + (hour + 9) * HOUR_MS),
    causes: [
      {
        limitId: 'air',
        text: 'below 40 °F',
        hour: iso(NOW + hour * HOUR_MS),
        mark: null,
        source: 'invented',
      },
    ],
  }));
  return {
    from,
    to,
    jobs: jobs
      .filter(({ id }) => (jobIds as readonly string[]).includes(id))
      .map(({ id }) => ({
        id,
        site: {
          id: `site of ${id}`,
          forecast: { id: 'f', source: 'invented', issuedAt: iso(NOW - HOUR_MS), hours },
          weatherWindows: [
            {
              limitKey: 'stone',
              name: 'Bed and stone',
              protection: [],
              issuedAt: iso(NOW - HOUR_MS),
              unknownAfter: iso(NOW + 240 * HOUR_MS),
              closed,
              requirements: [],
              unknown: [],
            },
          ],
        },
      })),
  };
}
