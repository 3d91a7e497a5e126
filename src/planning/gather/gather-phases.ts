import { OFFICE_CAUSE } from '../../../shared/moves/move-phase.js';
import type { Duration, EquipmentHold, Gate, Phase, PhaseFacts } from '../../../shared/schedule/model.js';
import type { Slot } from '../../../shared/schedule/slot.js';
import type { Commitment, Phase as PhaseRow } from '../../generated/prisma/client.js';
import { type FinishCure, gatherFinishCures, gatherGates, isWait } from './gather-gates.js';
import type { GatheredInspection } from './gather-inspections.js';
import type { GatheredWeather } from './gather-weather.js';
import type { PlanningRows } from './rows.js';
import { slotsOf, type TimeFrame } from './time-frame.js';

/** The phases of a plan with their facts, gates, holds and promises. */
export function gatherPhases(
  rows: PlanningRows,
  frame: TimeFrame,
  freezeUntil: Slot,
  inspections: readonly GatheredInspection[],
  weather: GatheredWeather,
): Phase[] {
  const gates = gatherGates(rows, frame);
  const cures = gatherFinishCures(rows);
  const commitments = new Map(rows.commitments.map((row) => [row.phaseId, row]));
  const previous = new Map(rows.planned.map((row) => [row.phaseId, row]));
  const holds = equipmentHolds(rows);
  const visits = new Map<string, Gate[]>();
  for (const { inspection, gates: gated } of inspections)
    for (const id of gated)
      visits.set(id, [...(visits.get(id) ?? []), { kind: 'inspection', inspectionId: inspection.id }]);
  return rows.phases.map((row) => {
    const waiting = row.state === 'waiting';
    const commitment = commitments.get(row.id);
    const before = waiting ? previous.get(row.id) : undefined;
    const cure = cures.get(row.id);
    return {
      id: row.id,
      jobId: row.jobId,
      duration: durationOf(row, cure, frame),
      trade: row.trade === null || row.trade === 'authority' ? undefined : row.trade,
      crewId: waiting ? (row.requiredCrewId ?? undefined) : undefined,
      weatherIds: weather.idsOf(row),
      holds: holds.get(row.id) ?? [],
      gates: waiting
        ? [
            ...(gates.get(row.id) ?? []),
            ...(visits.get(row.id) ?? []),
            ...promised(row, commitment, frame, freezeUntil),
            ...notBefore(row, frame),
          ]
        : [],
      facts: factsOf(row, cure, frame),
      commitment: commitment && !row.pinnedStart ? commitmentOf(commitment, frame) : undefined,
      previous: before && { start: frame.at(before.startAt), crewId: before.crewId ?? undefined },
    };
  });
}

/** A wait lasts at least until its placement is predicted to be strong enough. */
function durationOf(row: PhaseRow, cure: FinishCure | undefined, frame: TimeFrame): Duration {
  const slots = slotsOf(row.durationMinutes);
  if (!isWait(row))
    return { kind: 'work', slots, mode: row.continuity === 'continuous' ? 'continuous' : 'interruptible' };
  const release = cure && !cure.decided ? cure.placement?.predictedReleaseAt : undefined;
  const from = cure?.placement?.placedAt;
  const expected = cure && !cure.placement && !cure.decided ? slotsOf(cure.expectedMinutes ?? 0) : 0;
  const needed =
    release && from && row.state === 'waiting'
      ? frame.at(release) - Math.max(frame.at(from), frame.now)
      : expected;
  return { kind: 'elapsed', slots: Math.max(slots, needed) };
}

function factsOf(row: PhaseRow, cure: FinishCure | undefined, frame: TimeFrame): PhaseFacts | undefined {
  const { actualStart, actualFinish, pinnedStart } = row;
  if (!actualStart) return pinnedStart ? { pinnedStart: frame.at(pinnedStart) } : undefined;
  return {
    actualStart: frame.at(actualStart),
    actualFinish: actualFinish ? frame.at(actualFinish) : undefined,
    crewId: row.actualCrewId ?? undefined,
    remaining: actualFinish ? undefined : remainingOf(row, actualStart, cure, frame),
  };
}

/** What is left of a started phase: as told from the site; for a cure until it is predicted to be strong enough. */
function remainingOf(row: PhaseRow, started: Date, cure: FinishCure | undefined, frame: TimeFrame) {
  if (row.remainingMinutes !== null) return slotsOf(row.remainingMinutes);
  if (!isWait(row) || !cure) return undefined;
  if (cure.decided) return 0;
  const natural = frame.at(started) + slotsOf(row.durationMinutes);
  const release = cure.placement?.predictedReleaseAt;
  return Math.max(0, Math.max(natural, release ? frame.at(release) : natural) - frame.now);
}

function equipmentHolds({ holds, phases }: PlanningRows): Map<string, EquipmentHold[]> {
  const known = new Set(phases.map(({ id }) => id));
  const byPhase = new Map<string, EquipmentHold[]>();
  for (const { fromPhaseId, untilPhaseId, poolId, quantity } of holds) {
    const until = untilPhaseId !== fromPhaseId && known.has(untilPhaseId) ? untilPhaseId : undefined;
    const hold = { poolId, quantity, untilPhaseId: until };
    byPhase.set(fromPhaseId, [...(byPhase.get(fromPhaseId) ?? []), hold]);
  }
  return byPhase;
}

function commitmentOf({ startAt, finishAt, crewId }: Commitment, frame: TimeFrame) {
  return { start: frame.at(startAt), finish: frame.at(finishAt), crewId: crewId ?? undefined };
}

/** Outside the freeze window a promise still keeps a phase from being pulled forward: people were told that day. */
function promised(
  row: PhaseRow,
  commitment: Commitment | undefined,
  frame: TimeFrame,
  freezeUntil: Slot,
): Gate[] {
  if (!commitment || row.pinnedStart) return [];
  const at = frame.at(commitment.startAt);
  return at < freezeUntil ? [] : [{ kind: 'notBefore', id: commitment.id, at, cause: 'commitment' }];
}

/** The earliest start that the office has set. */
function notBefore({ id, notBefore: at }: PhaseRow, frame: TimeFrame): Gate[] {
  return at ? [{ kind: 'notBefore', id, at: frame.at(at), cause: OFFICE_CAUSE }] : [];
}
