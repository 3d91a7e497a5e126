import { isRecord } from './json-record.js';

/**
 * What an answer of a failed request says: the `title` and `detail` of RFC 7807 problem details, or the `reason` that
 * the open hourly service gives. Null when it says nothing.
 */
export function readProblem(answer: unknown): string | null {
  if (!isRecord(answer)) return null;
  const said = [answer['title'], answer['detail'], answer['reason']]
    .filter((part): part is string => typeof part === 'string' && part.trim() !== '')
    .map((part) => part.trim().slice(0, 300));
  return said.length === 0 ? null : [...new Set(said)].join(': ');
}
