import type { FastifyRequest } from 'fastify';
import type { Actor } from '../context.js';

/** Tells who is behind a request. The people feature is the one implementation. */
export abstract class Authenticator {
  /** The signed-in person, or null. `cookieHeader` is the raw Cookie header. */
  abstract actorOf(cookieHeader: string | undefined): Promise<Actor | null>;

  /** As `actorOf`, for an HTTP request. */
  actorOfRequest(request: FastifyRequest): Promise<Actor | null> {
    return this.actorOf(request.headers.cookie);
  }
}
