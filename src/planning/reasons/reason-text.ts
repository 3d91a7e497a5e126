import { OFFICE_CAUSE } from '../../../shared/moves/move-phase.js';
import type { Ahead } from '../../../shared/schedule/model.js';
import { localTime } from '../../platform/local-time.js';
import type { StoredStep } from './stored-reason.js';

/** Names for what a reason refers to. Phases of another job come with its name. */
export interface ReasonNames {
  /** Name of the phase the reason belongs to. */
  readonly subject: string;
  /** Zone of its site. */
  readonly zone: string;
  readonly phase: (id: string | null | undefined) => string;
  readonly crew: (id: string | undefined) => string;
  readonly pool: (id: string | undefined) => string;
  readonly clearance: (id: string | undefined) => string;
  readonly inspection: (id: string | undefined) => string;
}

/** The ends that a link ties, in words. */
export const LINK_WORDS: Readonly<Record<string, string>> = {
  finishStart: 'finish-start',
  startStart: 'start-start',
  finishFinish: 'finish-finish',
  startFinish: 'start-finish',
};

const NO_PLACE: Readonly<Record<string, string>> = {
  cycle: 'phases wait for each other in a circle; remove one of the links',
  crewMissing: 'no crew can do it; add a crew of that trade',
  poolTooSmall: 'it needs more equipment than the company owns',
  releaseMissing: 'the equipment it takes would never come back, because what gives it back has no place',
  noStretch: 'it must not pause, and no open stretch is as long as it',
  beyondHorizon: 'nothing is open to it as far ahead as is planned',
};

/** A reason as a plain sentence. */
export function reasonText(step: StoredStep, names: ReasonNames): string {
  const { subject, zone } = names;
  const when = step.at ? localTime(step.at, zone) : null;
  const until = when ? ` until ${when}` : '';
  switch (step.kind) {
    case 'now':
      return `Nothing holds ${subject} but the present: it can start at once.`;
    case 'actual':
      return `${subject} has started${when ? `, ${when}` : ''}.`;
    case 'link':
      return `${subject} waits for ${names.phase(step.phaseId)} (${linkWords(step.link)})${until}.`;
    case 'mostLag':
      return `${subject} is kept back${until}, so that ${names.phase(step.phaseId)} follows it soon enough.`;
    case 'crew':
      return `${subject} waits for ${names.crew(step.crewId)}, busy with ${names.phase(step.phaseId)}${until}.${goesFirst(step)}`;
    case 'equipment':
      return `${subject} waits for ${names.pool(step.poolId)}, out with ${names.phase(step.phaseId)}${givenBack(step, names)}${until}.${goesFirst(step)}`;
    case 'weather':
      return weatherText(step, names, until);
    case 'clearance':
      return when
        ? `${subject} waits for ${names.clearance(step.clearanceId)}, there ${when}.`
        : `${subject} waits for ${names.clearance(step.clearanceId)}, and nobody knows when it comes.`;
    case 'inspection':
      return step.visit
        ? `${subject} waits for the inspection "${names.inspection(step.inspectionId)}", visit ${localTime(step.visit.from, zone)}.`
        : `${subject} waits for the inspection "${names.inspection(step.inspectionId)}"${until}.`;
    case 'cure':
      return cureText(step, subject, when);
    case 'notBefore':
      if (step.code === OFFICE_CAUSE)
        return `The office has set that ${subject} starts no earlier than ${when ?? 'a day'}.`;
      return `${subject} is promised for ${when ?? 'a day'}, so it does not start earlier.`;
    case 'commitment':
      return `${subject} is promised for ${when ?? 'a day'}, so it does not start earlier.`;
    case 'pin':
      return `The office has fixed the start of ${subject}: ${when ?? 'a day'}.`;
    case 'calendar':
      return `${subject} waits for open hours${when ? `, which begin ${when}` : ''}.`;
    case 'unplanned':
      return step.code === 'predecessorUnplanned'
        ? `${subject} has no place in the plan, because ${step.phaseId ? `${names.phase(step.phaseId)} has` : 'an inspection before it has'} none.`
        : `${subject} has no place in the plan: ${NO_PLACE[step.code ?? ''] ?? 'see the conflicts'}.`;
    default:
      return visitText(step, names, when);
  }
}

/** By which rule another phase has what both want. */
const GOES_FIRST: Readonly<Record<Ahead, string>> = {
  fact: 'it has begun',
  pin: 'its start is fixed by the office',
  commitment: 'it is promised and soon due to begin',
  order: 'the improved plan in force puts it first',
  previous: 'it stood before this one in the plan before',
  priority: 'its job has the higher priority',
  due: 'its job is due sooner',
  tail: 'it has the longer way to go to its end',
  id: 'one of the two has to',
  link: 'it comes before this one anyway',
  needed: 'what goes first needs it',
};

/** Whether another phase merely goes first, so that a change of that rule would help, is not the same as a bound. */
function goesFirst({ ahead }: StoredStep): string {
  return ahead ? ` That goes first: ${GOES_FIRST[ahead]}.` : '';
}

function visitText(step: StoredStep, names: ReasonNames, when: string | null): string {
  const visit = `The visit for "${names.inspection(step.inspectionId)}"`;
  switch (step.kind) {
    case 'visit-phase':
      return `${visit} waits for ${names.phase(step.phaseId)} to be finished.`;
    case 'visit-notice':
      return `${visit} is ${when ?? 'later'} at the earliest: the authority asks for notice.`;
    case 'visit-hours':
      return `${visit} waits for the visiting hours of the authority, ${when ?? 'later'}.`;
    case 'visit-validity':
      return `${visit} is put off, so that it is still valid when ${names.phase(step.phaseId)} starts.`;
    case 'visit-booked':
      return `${visit} is booked for ${when ?? 'a day'}.`;
    case 'visit-passed':
      return `${visit} is done.`;
    default:
      return `${visit} has no place in the plan.`;
  }
}

function weatherText({ weather }: StoredStep, { subject, zone }: ReasonNames, until: string): string {
  if (weather?.cause === 'called') return `${subject} waits for the weather hold "${weather.text}"${until}.`;
  if (weather?.cause !== 'limit') return `${subject} waits for the weather${until}.`;
  const hour = weather.hour ? ` (forecast for ${localTime(weather.hour, zone)})` : '';
  return `${subject} waits for the weather${until}: ${weather.text}${hour}.`;
}

function cureText({ strength }: StoredStep, subject: string, when: string | null): string {
  const needed = strength?.needed ? ` of ${strength.needed} psi` : '';
  const now = strength?.now ? `, ${Math.round(strength.now)} psi now` : '';
  return when
    ? `${subject} waits for a strength${needed}${now}, predicted for ${when}; only a measurement or a named person releases it.`
    : `${subject} waits for a strength${needed}${now}, and nothing predicts it yet.`;
}

function givenBack({ phaseId, releasedBy }: StoredStep, names: ReasonNames): string {
  return releasedBy && releasedBy !== phaseId ? `, back with the end of ${names.phase(releasedBy)}` : '';
}

/** A link in words: the ends, and the lag where there is one. */
function linkWords(link: StoredStep['link']): string {
  const ends = LINK_WORDS[link?.kind ?? 'finishStart'] ?? 'finish-start';
  const minutes = link?.lagMinutes ?? 0;
  if (minutes === 0) return ends;
  const size = Math.abs(minutes);
  const span = size % 1440 === 0 ? `${size / 1440} d` : size % 60 === 0 ? `${size / 60} h` : `${size} min`;
  return `${ends}, ${minutes > 0 ? 'and' : 'less'} ${span}${link?.lagIn === 'working' ? ' of open time' : ''}`;
}
