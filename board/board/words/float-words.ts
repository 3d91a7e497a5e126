import { durationWords } from '../../time/moment-words.js';

/** The two floats of a phase in plain words. */
export function floatWords(planned: {
  totalFloatMinutes: number;
  freeFloatMinutes: number;
  critical: boolean;
}): string {
  const { totalFloatMinutes: total, freeFloatMinutes: free, critical } = planned;
  if (total < 0) return `${durationWords(-total)} late for the promised end, in its own working time.`;
  if (critical || total === 0) return 'None: if it slips, the end of the job slips.';
  const alone =
    free > 0 ? `${durationWords(free)} without moving any other phase` : 'none without moving other phases';
  return `${alone}; ${durationWords(total)} without moving the end of the job. Counted in its own working time.`;
}
