import type { StoredConflict } from '../replan/stored-conflict.js';
import { localTime } from '../../platform/local-time.js';
import { type ReasonNames, reasonText } from './reason-text.js';

/** Names for what a conflict refers to. */
export interface ConflictNames extends ReasonNames {
  readonly job: string;
  readonly others: readonly string[];
}

/** A conflict as plain sentences: what cannot be had, and what can be done. */
export function conflictText(conflict: StoredConflict, names: ConflictNames): string {
  const { subject, zone, job, others } = names;
  const when = (at: string | null | undefined): string => (at ? localTime(at, zone) : 'an unknown time');
  const asked = when(conflict.asked);
  const given = when(conflict.given);
  const because = conflict.cause ? ` ${reasonText(conflict.cause, names)}` : '';
  switch (conflict.code) {
    case 'cycle':
      return `${others.join(', ')} of job ${job} wait for each other in a circle; remove one of their links.`;
    case 'lagCycle':
      return `The greatest lags between ${others.join(', ')} of job ${job} cannot be met by any plan: the work between them takes ${hours(conflict.needed)} too long. Lengthen one of them or shorten the work.`;
    case 'lagExceeded':
      return `${subject} comes ${hours(conflict.needed)} too late after ${others.join(', ')}.${because} Move the earlier one, or lift what holds the later one.`;
    case 'inspectionLapsed':
      return `The visit for "${names.inspection(conflict.inspectionId)}" is valid until ${given}, but ${subject} starts ${asked}. Ask for another visit, or start sooner.`;
    case 'pinBeforePredecessor':
    case 'pinBeforeGate':
      return `The fixed start of ${subject}, ${asked}, is too early; ${given} is possible.${because} Move it or take it away.`;
    case 'pinInClosedTime':
      return `The fixed start of ${subject}, ${asked}, falls into closed time; ${given} is possible.${because} Move it or open the hours.`;
    case 'pinMoved':
      return `The fixed start of ${subject}, ${asked}, cannot be kept; planned for ${given}.${because}`;
    case 'commitmentBroken':
      return conflict.given
        ? `${subject} was promised for ${asked} and cannot start before ${given}.${because} Tell people, or lift what holds it.`
        : `${subject} was promised for ${asked} and has no place in the plan.${because}`;
    case 'dueMissed':
      return `Job ${job} is due ${asked} and finishes ${given}. Raise its priority, add a crew or agree another day.`;
    case 'clearanceLapsed':
      return `${names.clearance(conflict.clearanceId)} lapses ${given}, before ${subject} starts ${asked}. Renew it in time.`;
    case 'gateUndated':
      return `Nobody knows when ${names.clearance(conflict.clearanceId)} comes, so ${subject} is planned as if it were there. Enter when it is expected.`;
    case 'visitBeforeReady':
      return `The visit for "${names.inspection(conflict.inspectionId)}" is booked for ${asked}, but its work is finished ${given}. Book another window.`;
    case 'crewMissing':
      return `No crew can do ${subject} of job ${job} (${conflict.trade ?? 'no trade'}). Add a crew of that trade.`;
    case 'crewDoubled':
      return `${names.crew(conflict.crewId)} is on ${others.join(' and ')} at once. Correct the crew of one of them.`;
    case 'poolTooSmall':
      return `${subject} needs ${conflict.needed ?? 0} of ${names.pool(conflict.poolId)}; the company owns ${conflict.available ?? 0}. Add equipment or change the phase.`;
    case 'releaseMissing':
      return `${subject} would keep its equipment for good, because ${others.join(', ')} has no place in the plan.${because}`;
    case 'poolOverdrawn':
      return `More of ${names.pool(conflict.poolId)} is out than the company owns, ${asked} to ${given}: ${others.join(', ')}. Correct the records or bring some back.`;
    case 'noStretch':
      return `${subject} must not pause and takes ${hours(conflict.needed)}, but the longest open stretch is ${hours(conflict.available)}. Lengthen a day or split the phase.`;
    case 'beyondHorizon':
      return `${subject} finds no place as far ahead as is planned.${because}`;
    default:
      return `${subject} of job ${job} cannot be planned as asked.${because}`;
  }
}

const hours = (minutes: number | undefined): string => `${Math.round(((minutes ?? 0) / 60) * 10) / 10} h`;
