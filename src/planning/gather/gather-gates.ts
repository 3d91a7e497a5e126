import type { ClearanceGate, CureGate, Gate } from '../../../shared/schedule/model.js';
import type { Clearance, HoldPoint, Phase, Placement } from '../../generated/prisma/client.js';
import type { PlanningRows } from './rows.js';
import type { TimeFrame } from './time-frame.js';

const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;

/** The gates of unstarted phases from their clearances and from cures that gate a start; by phase id. */
export function gatherGates(rows: PlanningRows, frame: TimeFrame): Map<string, Gate[]> {
  const clearances = new Map(rows.clearances.map((row) => [row.id, row]));
  const waiting = new Set(rows.phases.filter(({ state }) => state === 'waiting').map(({ id }) => id));
  const gates = new Map<string, Gate[]>();
  const add = (phaseId: string, gate: Gate) => gates.set(phaseId, [...(gates.get(phaseId) ?? []), gate]);
  for (const point of rows.holdPoints) {
    if (!waiting.has(point.phaseId) || point.gate !== 'start' || point.state === 'waived') continue;
    const clearance = point.clearanceId === null ? undefined : clearances.get(point.clearanceId);
    if (point.kind === 'clearance' && clearance) add(point.phaseId, clearanceGate(clearance, frame));
    if (point.kind === 'cure' && point.state !== 'released')
      add(point.phaseId, cureGate(point, placementOf(point, rows), frame));
  }
  return gates;
}

/**
 * A clearance is there from when it was given, or expected. One that nobody has asked for is expected as if asked for now; one that should have come
 * and has not has no date. One that lapses must still live when the phase starts.
 */
function clearanceGate(row: Clearance, frame: TimeFrame): ClearanceGate {
  const earliest = row.state === 'cleared' ? (row.clearedAt ?? row.requestedAt) : expected(row, frame);
  const lapses =
    row.lapsesAt ??
    (earliest !== null && row.lifeDays !== null
      ? new Date(earliest.getTime() + row.lifeDays * DAY_MS)
      : null);
  return {
    kind: 'clearance',
    id: row.id,
    earliest: earliest === null ? null : frame.at(earliest),
    ...(lapses ? { expires: frame.at(lapses) } : {}),
  };
}

function expected(row: Clearance, frame: TimeFrame): Date | null {
  if (row.state === 'needed') return new Date(frame.nowMs + row.leadMinutes * MINUTE_MS);
  return row.expectedAt && row.expectedAt.getTime() > frame.nowMs ? row.expectedAt : null;
}

function cureGate(point: HoldPoint, placement: Placement | undefined, frame: TimeFrame): CureGate {
  const release = placement?.predictedReleaseAt;
  return {
    kind: 'cure',
    id: placement?.id ?? point.id,
    expected: release ? frame.at(release) : null,
    strengthNeeded: placement?.requiredPsi,
  };
}

/** The last placement of the phase whose strength a cure hold point waits for. */
export function placementOf(point: HoldPoint, rows: PlanningRows): Placement | undefined {
  const placedBy = point.placementPhaseId ?? point.phaseId;
  return rows.placements.findLast(({ phaseId }) => phaseId === placedBy);
}

/** A cure that keeps a wait from finishing: its placement, and whether somebody has decided it. */
export interface FinishCure {
  readonly placement: Placement | undefined;
  readonly decided: boolean;
  /** How long it is expected to take where nothing is placed yet, by the protection that was chosen. */
  readonly expectedMinutes: number | null;
}

/** Cures that gate the finish of a wait, by phase id; of several the one that takes longest. */
export function gatherFinishCures(rows: PlanningRows): Map<string, FinishCure> {
  const cures = new Map<string, FinishCure>();
  const chosen = new Map(rows.choices.map(({ phaseId, cureMinutes }) => [phaseId, cureMinutes]));
  for (const point of rows.holdPoints) {
    if (point.kind !== 'cure' || point.gate !== 'finish') continue;
    const cure = {
      placement: placementOf(point, rows),
      decided: point.state === 'released' || point.state === 'waived',
      expectedMinutes: chosen.get(point.placementPhaseId ?? point.phaseId) ?? null,
    };
    const known = cures.get(point.phaseId);
    if (!known || takesLonger(cure, known)) cures.set(point.phaseId, cure);
  }
  return cures;
}

function takesLonger(a: FinishCure, b: FinishCure): boolean {
  if (a.decided !== b.decided) return b.decided;
  return release(a) > release(b);
}

const release = ({ placement }: FinishCure): number => placement?.predictedReleaseAt?.getTime() ?? 0;

/** Whether a phase is only a wait. */
export const isWait = ({ durationKind }: Pick<Phase, 'durationKind'>): boolean => durationKind === 'elapsed';
