import { z } from 'zod';
import { HATCHES, TRADES } from '../../../shared/entry/template/words.js';

const LONGEST_MINUTES = 400 * 24 * 60;
const trades = TRADES.filter((trade) => trade !== 'authority');

/** A whole number of quarters of an hour, in which everything is planned. */
const quarters = z.number().int().multipleOf(15, { error: 'must be a multiple of 15 minutes' });

/** Minutes of a lag; negative for a lead. */
export const lagMinutes = quarters
  .min(-LONGEST_MINUTES, { error: 'must be 400 days at most' })
  .max(LONGEST_MINUTES, { error: 'must be 400 days at most' });

const word = (example: string) =>
  z.string().regex(/^[a-z][a-z0-9.-]{0,59}$/, {
    error: `must be lower-case letters, digits, hyphens and dots, such as ${example}`,
  });

/** A custom phase as a caller gives it, checked. */
export const customPhase = z
  .object({
    key: word('drain.walk'),
    kind: word('drain'),
    name: z
      .string()
      .trim()
      .min(1, { error: 'must not be empty' })
      .max(120, { error: 'has at most 120 letters' }),
    hatch: z.enum(HATCHES, { error: `must be one of ${HATCHES.join(', ')}` }),
    trade: z
      .enum(trades, { error: `must be one of ${trades.join(', ')}, or none for a wait` })
      .nullish()
      .transform((trade) => trade ?? null),
    durationKind: z.enum(['work', 'elapsed']),
    durationMinutes: quarters
      .min(0, { error: 'must be 0 or more' })
      .max(LONGEST_MINUTES, { error: 'must be 400 days at most' }),
    continuity: z.enum(['continuous', 'interruptible']),
    weatherLimitKey: z
      .string()
      .nullish()
      .transform((key) => key || null),
  })
  .refine(({ durationKind, trade }) => (durationKind === 'work') === (trade !== null), {
    path: ['trade'],
    error: 'must name who does it when the duration is work, and nobody when it is an elapsed wait',
  });
