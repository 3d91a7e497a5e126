import { useCallback, useMemo, useState } from 'react';
import type { BoardPhaseFragment, NewestMoveQuery } from '../api/documents.js';
import { barTimes } from '../board/layout/bar-times.js';
import type { BoardData } from '../board/layout/rows.js';
import type { PlannedHere } from '../planning/use-planner.js';
import { useSends } from '../sends/sends.js';
import { type Preview, previewMove } from './preview.js';
import { momentOf, nearestSlot } from './slots.js';
import { type Step, stepFrom } from './steps.js';
import type { Tried } from './tried.js';
import { openHours } from './open-hours.js';

export type OfferedMove = NonNullable<NewestMoveQuery['newestMove']>;

/** A move in hand, and what can be done with it. */
export interface Moving {
  /** What is drawn: the move in hand, else the one that waits as a proposal. */
  readonly preview: Preview | null;
  /** The move in hand; null when nothing is picked up. */
  readonly tried: Tried | null;
  readonly phase: BoardPhaseFragment | null;
  readonly canMove: (phaseId: string) => boolean;
  readonly pickUp: (phaseId: string) => void;
  readonly to: (changes: Partial<Omit<Tried, 'phaseId'>>) => void;
  readonly step: (step: Step, direction: 1 | -1) => void;
  /** Proposes it; nothing happens when it has not been moved. */
  readonly drop: () => void;
  readonly giveUp: () => void;
}

const DAY_MINUTES = 24 * 60;

/** Picks phases up and moves them; each step is planned here at once by the same engine that the service uses. */
export function useMoving(
  board: BoardData | null,
  here: PlannedHere | null,
  offered: OfferedMove | null,
): Moving {
  const { send } = useSends();
  const [tried, setTried] = useState<Tried | null>(null);
  const shown = tried ?? triedOf(offered);
  // By value: the one that waits is read anew with every answer.
  const text = shown && JSON.stringify(shown);
  const preview = useMemo(
    () => (text && here && board ? previewMove(here, board, JSON.parse(text) as Tried) : null),
    [text, here, board],
  );
  const phases = useMemo(() => new Map(board?.phases.map((phase) => [phase.id, phase])), [board]);
  const planned = useMemo(() => new Set(here?.input.phases.map(({ id }) => id)), [here]);
  const phase = (tried && phases.get(tried.phaseId)) ?? null;
  const giveUp = useCallback(() => setTried(null), []);
  const canMove = useCallback(
    (phaseId: string) => planned.has(phaseId) && phases.get(phaseId)?.state === 'waiting',
    [planned, phases],
  );
  const startOf = (one: BoardPhaseFragment): number | null => {
    const times = board && barTimes(one, Date.parse(board.now));
    return times && here ? momentOf(nearestSlot(times.from, here.scale), here.scale) : null;
  };
  return {
    preview,
    tried,
    phase,
    canMove,
    pickUp: (phaseId) => {
      const one = phases.get(phaseId);
      const at = one && canMove(phaseId) ? startOf(one) : null;
      if (at !== null) setTried({ phaseId, way: 'notBefore', at, crewId: null });
    },
    to: (changes) => setTried((now) => now && { ...now, ...onSlot(changes, here) }),
    step: (step, direction) =>
      setTried((now) => {
        if (!now || !here) return now;
        const { scale, input } = here;
        const bounds = {
          now: input.now,
          horizon: input.horizon,
          slotsOfDay: DAY_MINUTES / scale.slotMinutes,
        };
        const from = nearestSlot(now.at, scale);
        const to = stepFrom(from, step, direction, openHours(input, now.phaseId), bounds);
        return { ...now, at: momentOf(to, scale) };
      }),
    drop: () => {
      if (!tried || !phase) return;
      if (tried.at === startOf(phase) && tried.way === 'notBefore' && tried.crewId === null) return giveUp();
      const { phaseId, way, at, crewId } = tried;
      const title = `Propose to move ${phase.job.number} ${phase.name}`;
      void send('proposeMove', title, { phaseId, way, startAt: new Date(at).toISOString(), crewId }).then(
        (done) => done && giveUp(),
      );
    },
    giveUp,
  };
}

/** A moment that is asked for stands on a slot, and not before the present. */
function onSlot(changes: Partial<Omit<Tried, 'phaseId'>>, here: PlannedHere | null) {
  if (changes.at === undefined || !here) return changes;
  const { scale, input } = here;
  const at = Math.min(Math.max(nearestSlot(changes.at, scale), input.now), input.horizon - 1);
  return { ...changes, at: momentOf(at as typeof input.now, scale) };
}

function triedOf(offered: OfferedMove | null): Tried | null {
  if (offered?.state !== 'offered' || !offered.phase) return null;
  const { phase, way, startAt, crew } = offered;
  return { phaseId: phase.id, way, at: Date.parse(startAt), crewId: crew?.id ?? null };
}
