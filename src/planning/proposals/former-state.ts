import type { Prisma, ProposedMove } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import type { StoredDifferences } from '../replan/stored-differences.js';
import type { StoodAt } from '../replan/stand-before.js';

/** What the acceptance of a proposal replaces; instants are ISO text. */
export interface FormerState {
  /** What the office had set about the phase that a move is for. */
  readonly phase: {
    readonly id: string;
    readonly notBefore: string | null;
    readonly pinnedStart: string | null;
    readonly requiredCrewId: string | null;
  } | null;
  /** The promises that gave way. */
  readonly promises: readonly FormerPromise[];
  /** Phases whose promise was made or taken back. */
  readonly promised: readonly string[];
  /** Where the phases that move stood in the plan. */
  readonly places: readonly FormerPlace[];
}

/** Dates that were promised for a phase. */
export interface FormerPromise {
  readonly phaseId: string;
  readonly crewId: string | null;
  readonly startAt: string;
  readonly finishAt: string;
}

/** A place in the plan. */
export interface FormerPlace {
  readonly phaseId: string;
  readonly startAt: string;
  readonly crewId: string | null;
}

/** The former state in a stored proposal; null when its acceptance cannot be undone. */
export const readFormer = (stored: Prisma.JsonValue): FormerState | null =>
  stored as unknown as FormerState | null;

/** Reads what an acceptance is about to replace. */
export async function formerState(
  { tx, ctx }: Change,
  { phases, moves = [] }: StoredDifferences,
  move: ProposedMove | null,
): Promise<FormerState> {
  const { companyId } = ctx;
  const promised = phases.map(({ phaseId }) => phaseId);
  const moving = [...promised, ...moves.map(({ phaseId }) => phaseId)];
  const phase = move && (await tx.phase.findUniqueOrThrow({ where: { id: move.phaseId } }));
  const held = await tx.commitment.findMany({
    where: { companyId, state: 'held', phaseId: { in: promised } },
    orderBy: { phaseId: 'asc' },
  });
  const planned = await tx.plannedPhase.findMany({
    where: { companyId, phaseId: { in: moving } },
    orderBy: { phaseId: 'asc' },
  });
  return {
    phase: phase && {
      id: phase.id,
      notBefore: phase.notBefore?.toISOString() ?? null,
      pinnedStart: phase.pinnedStart?.toISOString() ?? null,
      requiredCrewId: phase.requiredCrewId,
    },
    promises: held.map(({ phaseId, crewId, startAt, finishAt }) => ({
      phaseId,
      crewId,
      startAt: startAt.toISOString(),
      finishAt: finishAt.toISOString(),
    })),
    promised,
    places: planned.map(({ phaseId, startAt, crewId }) => ({
      phaseId,
      startAt: startAt.toISOString(),
      crewId,
    })),
  };
}

/** The places as the next plan is to rank them. */
export const stoodAt = ({ places }: FormerState): StoodAt[] =>
  places.map(({ phaseId, startAt, crewId }) => ({ phaseId, startAt: new Date(startAt), crewId }));
