import { z } from 'zod';

/** Why something is done, in a few words. */
export const reasonText = z
  .string()
  .trim()
  .min(3, { error: 'must say why, in a few words' })
  .max(500, { error: 'has at most 500 letters' });
