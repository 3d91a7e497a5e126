import { durationWords } from '../time/moment-words.js';

/** By how much waiting finishes a job later or earlier, in brackets; nothing when it is unknown. */
export function laterWords(minutes: number | null): string {
  if (minutes === null || minutes === 0) return '';
  return `(${durationWords(Math.abs(minutes))} ${minutes > 0 ? 'later' : 'earlier'})`;
}
