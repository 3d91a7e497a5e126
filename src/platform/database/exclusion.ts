/** PostgreSQL's error codes that the service turns into outcomes. */
const EXCLUSION_VIOLATION = '23P01';
const UNIQUE_VIOLATION = '23505';

function causes(error: unknown): string[] {
  const found: string[] = [];
  let current: unknown = error;
  for (let depth = 0; depth < 6 && typeof current === 'object' && current !== null; depth += 1) {
    const { code, originalCode, meta, cause } = current as Record<string, unknown>;
    for (const value of [code, originalCode]) if (typeof value === 'string') found.push(value);
    if (typeof meta === 'object' && meta !== null)
      found.push(...causes((meta as Record<string, unknown>)['driverAdapterError']));
    current = cause;
  }
  return found;
}

/** Whether the database refused a row because it overlaps another (an exclusion constraint). */
export function isExclusionViolation(error: unknown): boolean {
  return causes(error).includes(EXCLUSION_VIOLATION);
}

/** Whether the database refused a row because its unique key exists. */
export function isUniqueViolation(error: unknown): boolean {
  const found = causes(error);
  return found.includes(UNIQUE_VIOLATION) || found.includes('P2002');
}
