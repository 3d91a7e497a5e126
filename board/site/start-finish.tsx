import { useSends } from '../sends/sends.js';
import { pressedAt } from '../time/service-clock.js';
import { phaseTitle } from '../words/phase-words.js';
import type { SitePhase } from './day-sections.js';

/** Who may run phases. */
export const mayRun = (role: string): boolean => role === 'office' || role === 'foreman';

/** The large button that marks the start or the finish of a phase, now. */
export function StartFinish({ phase }: { readonly phase: SitePhase }) {
  const { send } = useSends();
  const mark = phase.state === 'started' ? ('finish' as const) : ('start' as const);
  const word = mark === 'finish' ? 'Finish' : 'Start';
  const press = () =>
    void send('markPhase', `${word} ${phase.job.number} ${phaseTitle(phase)}`, {
      phaseId: phase.id,
      mark,
      at: pressedAt(),
      seen: mark === 'finish' ? phase.actualFinish : phase.actualStart,
      revision: phase.revision,
    });
  return (
    <button type="button" className="act act-strong act-large" onClick={press}>
      {word}
    </button>
  );
}
