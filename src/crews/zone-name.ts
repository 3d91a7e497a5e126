import { z } from 'zod';

function isZone(name: string): boolean {
  try {
    return Boolean(new Intl.DateTimeFormat('en', { timeZone: name }));
  } catch {
    return false;
  }
}

/** An IANA time zone that the machine knows. */
export const zoneName = z
  .string()
  .refine(isZone, { error: 'must be an IANA time zone such as America/New_York' });
