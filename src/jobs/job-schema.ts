import { z } from 'zod';

/** Name of a job or of the owner of the house. */
export const jobName = z
  .string()
  .trim()
  .min(1, { error: 'must not be empty' })
  .max(120, { error: 'has at most 120 letters' });

/** Priority of a job. */
export const jobPriority = z
  .number()
  .int()
  .min(1, { error: 'must be 1 (served first) to 9 (served last)' })
  .max(9, { error: 'must be 1 (served first) to 9 (served last)' });
