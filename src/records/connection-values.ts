/** What stands in the record of a connection, in words. */
const NAMES: Readonly<Record<string, string>> = {
  breakerAmperes: 'Breaker, A',
  disconnect: 'Disconnect in place and marked',
  groundFault: 'Ground-fault protection of equipment, tested',
  note: 'Note of the electrician',
};

/** The values of a stored record of a connection that are known by name, in their order; none where there is no record. */
export function connectionValues(record: unknown): (readonly [name: string, value: string])[] {
  if (typeof record !== 'object' || record === null) return [];
  const stored = record as Readonly<Record<string, unknown>>;
  return Object.entries(NAMES).flatMap(([key, name]) => {
    const value = stored[key];
    if (typeof value === 'boolean') return [[name, value ? 'yes' : 'no'] as const];
    return typeof value === 'number' || typeof value === 'string' ? [[name, String(value)] as const] : [];
  });
}
