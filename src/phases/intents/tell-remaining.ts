import type { Change } from '../../platform/change/change.js';
import { recordProgress } from '../running/record-progress.js';
import type { TellRemainingInput } from './intents.inputs.js';
import { demandIntentPhase, settle } from './settle.js';

/** Tells how much work is left, unless somebody else has told otherwise meanwhile. */
export async function tellRemaining(change: Change, input: TellRemainingInput) {
  const phase = await demandIntentPhase(change, input.phaseId);
  const text = (minutes: number | null | undefined) => (minutes == null ? null : String(minutes));
  const field = {
    field: 'work left',
    standing: text(phase.remainingMinutes),
    seen: text(input.seen),
    asked: text(input.remainingMinutes),
    words: (value: string | null) => (value === null ? 'not told' : hours(Number(value))),
    actions: ['progress told', 'phase started', 'phase finished'],
  };
  return settle(change, phase, input.revision, field, () =>
    recordProgress(change, { phaseId: phase.id, remainingMinutes: input.remainingMinutes }),
  );
}

function hours(minutes: number): string {
  const whole = Math.floor(minutes / 60);
  return [whole && `${whole} h`, (minutes % 60 || !whole) && `${minutes % 60} min`].filter(Boolean).join(' ');
}
