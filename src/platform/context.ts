import type DataLoader from 'dataloader';
import type { LinkPurpose, Role } from '../generated/prisma/client.js';

/** What a signed link lets its holder reach: of one job, what it names. */
export interface LinkScope {
  readonly id: string;
  readonly purpose: LinkPurpose;
  readonly jobId: string;
  /** Fields of the API that it may ask for, each as `Type.field`. */
  readonly reach: ReadonlySet<string>;
}

/** Who is acting: a signed-in person of one company, or the holder of a signed link. */
export interface Actor {
  readonly companyId: string;
  readonly personId: string;
  readonly role: Role;
  readonly name: string;
  /** Set when a signed link stands in for signing in; `personId` is then empty unless it was made for a person. */
  readonly link?: LinkScope;
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
