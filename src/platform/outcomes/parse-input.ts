import type { z } from 'zod';
import { InvalidInput } from './invalid-input.js';
import { Refused } from './refusal.js';

/**
 * Checks an input against its schema.
 *
 * @throws Refused with InvalidInput that lists every fault.
 */
export function parseInput<S extends z.ZodType>(schema: S, input: unknown): z.infer<S> {
  const parsed = schema.safeParse(input);
  if (parsed.success) return parsed.data;
  throw new Refused(
    new InvalidInput(parsed.error.issues.map(({ path, message }) => ({ path: path.join('.'), message }))),
  );
}
