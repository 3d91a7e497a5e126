import type { HookupOfSheet } from './hookup-of-sheet.js';
import { dayWords, isoWords } from '../time/moment-words.js';

type Facts = Pick<
  HookupOfSheet,
  'state' | 'needs' | 'bookedFor' | 'bookedBy' | 'doneAt' | 'doneBy' | 'energisedAt'
>;

/** How a hookup stands, in a sentence or two. */
export function standing(hookup: Facts, zone: string): string {
  const { state, needs, bookedFor, bookedBy, doneAt, doneBy, energisedAt } = hookup;
  const by = (name: string | null | undefined) => (name ? ` by ${name}` : '');
  if (energisedAt) return `Connected and energised, ${isoWords(energisedAt, zone)}.`;
  if (state === 'done') return `Recorded${by(doneBy)}${doneAt ? `, ${isoWords(doneAt, zone)}` : ''}.`;
  if (state === 'booked' && bookedFor)
    return `Booked for ${dayWords(Date.parse(bookedFor), zone)}${by(bookedBy)}. It can be booked anew below.`;
  if (state === 'ready') return 'Ready: everything below is met. Book a day.';
  const open = needs.filter(({ met }) => !met).length;
  return `Not ready yet: ${open} of ${needs.length} needs ${open === 1 ? 'is' : 'are'} open. Do not come for it yet; you are told once, when the last one is met.`;
}
