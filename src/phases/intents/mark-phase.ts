import type { Change } from '../../platform/change/change.js';
import { localTime } from '../../platform/local-time.js';
import { demandPast } from '../../platform/outcomes/demand-past.js';
import { finishPhase } from '../running/finish-phase.js';
import { startPhase } from '../running/start-phase.js';
import { settleWaits } from '../waits/settle-waits.js';
import { correctFinish, correctStart } from './correct-moment.js';
import type { MarkPhaseInput } from './intents.inputs.js';
import { demandIntentPhase, settle } from './settle.js';

const ACTIONS = {
  start: ['phase started', 'phase start corrected', 'phase put back before its start'],
  finish: ['phase finished', 'phase finish corrected', 'phase put back to started'],
} as const;

/** Marks a start or a finish: through the gate where there is none yet, as a correction where one stands. */
export async function markPhase(change: Change, input: MarkPhaseInput) {
  const { mark, seen, revision } = input;
  // A wait whose time is over is brought up to date first, so that it does not look like somebody else's change.
  await settleWaits(change);
  const phase = await demandIntentPhase(change, input.phaseId);
  const at = demandPast(change, input.at);
  const standing = mark === 'start' ? phase.actualStart : phase.actualFinish;
  const { zone } = phase.job.site;
  const field = {
    field: mark,
    standing: standing?.toISOString() ?? null,
    seen: seen?.toISOString() ?? null,
    asked: at.toISOString(),
    words: (value: string | null) => (value ? localTime(new Date(value), zone) : 'not marked'),
    actions: ACTIONS[mark],
  };
  return settle(change, phase, revision, field, () => {
    if (mark === 'start')
      return standing ? correctStart(change, phase, at) : startPhase(change, { phaseId: phase.id, at });
    return standing ? correctFinish(change, phase, at) : finishPhase(change, { phaseId: phase.id, at });
  });
}
