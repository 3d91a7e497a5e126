import type { z } from 'zod';

/** A member that a caller may leave out or give as null; both mean "as it is" and become undefined. */
export function orLeftOut<S extends z.ZodType>(schema: S) {
  return schema.nullish().transform((value) => value ?? undefined);
}
