import type { OwnerDay } from './owner-days.js';

/** The week in a sentence: on how many days something happens, and whether weather is in the way. */
export function summaryWords(days: readonly OwnerDay[], jobState: 'running' | 'done' | 'cancelled'): string {
  if (jobState === 'cancelled') return 'This job was given up. Ask the office what that means for you.';
  if (jobState === 'done') return 'The work is finished.';
  const busy = days.filter(({ lines }) => lines.length > 0).length;
  const held = days.some(({ weather }) => weather.length > 0);
  const what =
    busy === 0
      ? 'Nothing is planned at your entry in these seven days.'
      : `Something happens at your entry on ${busy === 1 ? 'one' : busy} of these seven days.`;
  return held ? `${what} The weather keeps some of the work waiting.` : what;
}
