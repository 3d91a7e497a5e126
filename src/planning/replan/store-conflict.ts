import type { Conflict } from '../../../shared/schedule/model.js';
import { SLOT_MINUTES } from '../../../shared/schedule/slot.js';
import { iso, type ReasonFacts, storeOne } from '../reasons/store-reason.js';
import type { StoredConflict } from './stored-conflict.js';

/** A conflict of the engine in its stored form; `jobOf` tells the job of a phase. */
export function storeConflict(
  conflict: Conflict,
  facts: ReasonFacts,
  jobOf: (phaseId: string) => string | null,
): StoredConflict {
  const { frame } = facts;
  const { code } = conflict;
  const about = (phaseId: string) => ({ code, phaseId, jobId: jobOf(phaseId) });
  switch (conflict.code) {
    case 'cycle':
      return { ...about(conflict.phaseIds[0] ?? ''), phaseIds: conflict.phaseIds };
    case 'lagCycle': {
      const by = conflict.by * SLOT_MINUTES;
      return { ...about(conflict.phaseIds[0] ?? ''), phaseIds: conflict.phaseIds, needed: by };
    }
    case 'lagExceeded': {
      const phaseIds = [conflict.phaseIds.at(0) ?? ''];
      const by = conflict.by * SLOT_MINUTES;
      return {
        ...about(conflict.phaseIds.at(-1) ?? ''),
        phaseIds,
        needed: by,
        cause: storeOne(conflict.cause, facts),
      };
    }
    case 'inspectionLapsed': {
      const { inspectionId, expires, start } = conflict;
      const times = { asked: iso(start, frame), given: iso(expires, frame) };
      return { ...about(conflict.phaseId), inspectionId, ...times };
    }
    case 'pinBeforePredecessor':
    case 'pinBeforeGate':
    case 'pinInClosedTime': {
      const { pin, earliest, cause } = conflict;
      const times = { asked: iso(pin, frame), given: iso(earliest, frame) };
      return { ...about(conflict.phaseId), ...times, cause: storeOne(cause, facts) };
    }
    case 'pinMoved': {
      const times = { asked: iso(conflict.pin, frame), given: iso(conflict.start, frame) };
      return { ...about(conflict.phaseId), ...times, cause: storeOne(conflict.cause, facts) };
    }
    case 'commitmentBroken': {
      const times = { asked: iso(conflict.committed, frame), given: iso(conflict.start, frame) };
      return { ...about(conflict.phaseId), ...times, cause: storeOne(conflict.cause, facts) };
    }
    case 'dueMissed': {
      const { jobId, due, finish } = conflict;
      return { code, jobId, asked: iso(due, frame), given: iso(finish, frame) };
    }
    case 'clearanceLapsed': {
      const { clearanceId, expires, start } = conflict;
      return {
        ...about(conflict.phaseId),
        clearanceId,
        asked: iso(start, frame),
        given: iso(expires, frame),
      };
    }
    case 'gateUndated':
      return { ...about(conflict.phaseId), clearanceId: conflict.gateId };
    case 'visitBeforeReady': {
      const { inspectionId, booked, ready } = conflict;
      const jobId = facts.visits.get(inspectionId)?.jobId ?? null;
      return { code, jobId, inspectionId, asked: iso(booked, frame), given: iso(ready, frame) };
    }
    case 'crewMissing':
      return { ...about(conflict.phaseId), trade: conflict.trade };
    case 'crewDoubled':
      return { ...about(conflict.phaseIds[0]), crewId: conflict.crewId, phaseIds: conflict.phaseIds };
    case 'poolTooSmall': {
      const { poolId, needed, quantity } = conflict;
      return { ...about(conflict.phaseId), poolId, needed, available: quantity };
    }
    case 'releaseMissing':
      return {
        ...about(conflict.phaseId),
        phaseIds: [conflict.releasePhaseId],
        cause: storeOne(conflict.cause, facts),
      };
    case 'poolOverdrawn': {
      const { poolId, phaseIds, from, to } = conflict;
      const [first = ''] = phaseIds;
      return { ...about(first), poolId, phaseIds, asked: iso(from, frame), given: iso(to, frame) };
    }
    case 'noStretch':
      return {
        ...about(conflict.phaseId),
        needed: conflict.needed * SLOT_MINUTES,
        available: conflict.longest * SLOT_MINUTES,
      };
    case 'beyondHorizon':
      return { ...about(conflict.phaseId), cause: storeOne(conflict.cause, facts) };
  }
}
