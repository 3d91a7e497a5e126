import { z } from 'zod';
import { clientKey } from '../platform/graphql/client-key.js';

/** Schema of releasing a photo and of taking it back. */
export const releaseSchema = z.object({ clientKey });

/** What is told of a photo beside its picture, as the query of the address has it. */
export const sentPhotoSchema = z.object({
  clientKey,
  phaseId: z.string({ error: 'must name the phase' }),
  holdPointId: z.string().optional(),
  caption: z
    .string()
    .trim()
    .max(200, { error: 'has at most 200 letters' })
    .optional()
    .transform((caption) => caption || undefined),
  takenAt: z
    .string({ error: 'must say when it was taken' })
    .pipe(z.iso.datetime({ offset: true, error: 'must be a moment such as 2031-01-06T14:00:00Z' }))
    .transform((text) => new Date(text)),
  fromOutbox: z
    .enum(['true', 'false'])
    .optional()
    .transform((text) => text === 'true'),
});

/** What is told of a photo beside its picture. */
export type SentPhoto = z.infer<typeof sentPhotoSchema>;
