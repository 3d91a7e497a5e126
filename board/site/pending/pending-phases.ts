import type { ChangeInput, ChangeName } from '../../sends/change-documents.js';
import type { Send } from '../../sends/send.js';
import type { SitePhase } from '../day-sections.js';
import { pendingHolds } from './pending-holds.js';

/** A phase as this phone has it: what is on its way counts as done here. */
export type PendingPhase = SitePhase & {
  readonly pending: boolean;
  /** Photos of it that lie on this phone only. */
  readonly photosUnsent: number;
};

/**
 * The phases of the sheet with everything laid over them that this phone has still to send, oldest first, so that the
 * next press builds on the one before it. What the service has just taken counts until its newer answer comes.
 */
export function pendingPhases(phases: readonly SitePhase[], sends: readonly Send[]): PendingPhase[] {
  const oldestFirst = sends.toReversed();
  return phases.map((phase) => {
    const site = { ...phase.job.site, weatherHolds: pendingHolds(phase.job.site, oldestFirst) };
    const start: PendingPhase = { ...phase, job: { ...phase.job, site }, pending: false, photosUnsent: 0 };
    return oldestFirst.filter((send) => counts(send, phase)).reduce(lay, start);
  });
}

/** What is unsent, and what the service took of the phase as it is shown. */
function counts({ state, input }: Send, phase: SitePhase): boolean {
  if (state === 'unsent' || state === 'sending') return true;
  return state === 'done' && input['phaseId'] === phase.id && input['revision'] === phase.revision;
}

function lay(phase: PendingPhase, send: Send): PendingPhase {
  if (is(send, 'decideHoldPoint')) return layDecision(phase, send.input);
  if (send.input['phaseId'] !== phase.id) return phase;
  const pending = phase.pending || send.state !== 'done';
  if (is(send, 'markPhase')) return { ...layMark(phase, send.input), pending };
  if (is(send, 'notePhase')) return { ...phase, note: send.input.note ?? null, pending };
  if (is(send, 'tellRemaining')) return { ...phase, remainingMinutes: send.input.remainingMinutes, pending };
  if (send.change === 'addPhoto' && send.state !== 'done')
    return { ...phase, pending, photosUnsent: phase.photosUnsent + 1 };
  return send.change === 'recordPlacement' ? { ...phase, pending } : phase;
}

function layMark(phase: PendingPhase, { mark, at }: ChangeInput<'markPhase'>): PendingPhase {
  if (mark === 'finish') return { ...phase, state: 'done', actualFinish: at, obstacles: [] };
  const obstacles = phase.holdPoints
    .filter(({ gate, state }) => gate === 'finish' && (state === 'open' || state === 'refused'))
    .map(({ id, title }) => ({
      __typename: 'Obstacle' as const,
      code: 'HoldPointOpen',
      message: `${title} is not released yet.`,
      liftedBy: null,
      holdPoint: { __typename: 'HoldPoint' as const, id },
    }));
  return { ...phase, state: 'started', actualStart: at, obstacles };
}

function layDecision(phase: PendingPhase, input: ChangeInput<'decideHoldPoint'>): PendingPhase {
  const { holdPointId, decision } = input;
  if (!phase.holdPoints.some(({ id }) => id === holdPointId)) return phase;
  return {
    ...phase,
    pending: true,
    holdPoints: phase.holdPoints.map((point) =>
      point.id === holdPointId ? { ...point, state: decision } : point,
    ),
    obstacles:
      decision === 'released'
        ? phase.obstacles.filter(({ holdPoint }) => holdPoint?.id !== holdPointId)
        : phase.obstacles,
  };
}

function is<N extends ChangeName>(send: Send, change: N): send is Send & { readonly input: ChangeInput<N> } {
  return send.change === change;
}
