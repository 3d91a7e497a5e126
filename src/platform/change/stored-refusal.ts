import type { Prisma } from '../../generated/prisma/client.js';
import { Refusal } from '../outcomes/refusal.js';

/** How a refusal is kept as the answer of a client key: apart from what a success answers, its instants marked. */
export function storedRefusal(refusal: Refusal): Prisma.InputJsonObject {
  const text = JSON.stringify(refusal, function (this: Record<string, unknown>, name, value: unknown) {
    const member = this[name];
    return member instanceof Date ? { instant: member.toISOString() } : value;
  });
  return { refused: JSON.parse(text) as Prisma.InputJsonObject };
}

/** The refusal in a stored answer; null when it is the answer of a success. */
export function refusalIn(answer: unknown): Refusal | null {
  const refused = (answer as { refused?: object } | null)?.refused;
  if (!refused) return null;
  const members = JSON.parse(JSON.stringify(refused), (_name, value: unknown) => {
    const instant = (value as { instant?: unknown } | null)?.instant;
    return typeof instant === 'string' ? new Date(instant) : value;
  }) as object;
  return Object.assign(Object.create(Refusal.prototype) as Refusal, members);
}
