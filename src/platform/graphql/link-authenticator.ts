import type { FastifyRequest } from 'fastify';
import type { Actor } from '../context.js';
import type { CodedError } from './coded-error.js';

/** Header by which a page says that it asks by a signed link, and by which one. */
export const LINK_HEADER = 'flagway-link';

/** Tells who holds a signed link. The signed links are the one implementation. */
export abstract class LinkAuthenticator {
  /** The holder of that link in this browser, or why it opens nothing. */
  abstract holderOf(linkId: string, cookieHeader: string | undefined): Promise<Actor | CodedError>;

  /** As `holderOf`, for an HTTP request; null when it names no link. */
  async holderOfRequest(request: FastifyRequest): Promise<Actor | CodedError | null> {
    const named = request.headers[LINK_HEADER];
    return named === undefined ? null : this.holderOf(String(named), request.headers.cookie);
  }
}
