import type DataLoader from 'dataloader';
import type { Role } from '../generated/prisma/client.js';

/** Who is acting: a signed-in person of one company. */
export interface Actor {
  readonly companyId: string;
  readonly personId: string;
  readonly role: Role;
  readonly name: string;
}

/** What every service gets first: who acts, and the request's own batches. One per request. */
export interface Context extends Actor {
  readonly requestId: string;
  /** Loaders of this request, by name; see `batched`. */
  readonly batches: Map<string, DataLoader<string, unknown>>;
}

/** A context for work without a request: the worker, the seed, a rehearsal. */
export function contextOf(actor: Actor, requestId = 'internal'): Context {
  return { ...actor, requestId, batches: new Map() };
}
