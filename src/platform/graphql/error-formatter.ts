import { GraphQLError, type GraphQLFormattedError } from 'graphql';
import { log } from '../log.js';

interface ErrorWithOriginal {
  originalError?: unknown;
}

/** The error at the bottom of the wrappers that Nest and mercurius put around it. */
function original(error: unknown): unknown {
  let current = error;
  for (let depth = 0; depth < 8; depth += 1) {
    const inner = (current as ErrorWithOriginal | null)?.originalError;
    if (!inner) return current;
    current = inner;
  }
  return current;
}

/** A request that Fastify refused before it became a document: too large, no JSON. */
function refusedRequest(error: unknown): { message: string; statusCode: number } | null {
  const { code, statusCode, message } = (original(error) ?? {}) as Record<string, unknown>;
  const isOne = typeof code === 'string' && code.startsWith('FST_') && typeof statusCode === 'number';
  return isOne && statusCode < 500 ? { message: String(message), statusCode } : null;
}

/** HTTP status of an answer with errors: that of a refused request, else 200, as GraphQL over HTTP has it. */
export function statusOf(errors: readonly GraphQLError[]): number {
  return refusedRequest(errors[0])?.statusCode ?? 200;
}

/** The single faults of a document that mercurius gathers into one error; any other error stays itself. */
export function singleErrors(errors: readonly GraphQLError[]): readonly GraphQLError[] {
  return errors.flatMap(
    (error) => (original(error) as { errors?: readonly GraphQLError[] }).errors ?? [error],
  );
}

/**
 * What a caller sees of an error: coded errors and faults of the document as they are, anything else as "internal" with
 * the request's id, while the whole error goes to the log.
 */
export function formatError(error: GraphQLError, requestId: string): GraphQLFormattedError {
  const cause = original(error);
  const coded = cause instanceof GraphQLError ? cause : error.extensions['code'] ? error : null;
  const place = {
    ...(error.path ? { path: error.path } : {}),
    ...(error.locations ? { locations: error.locations } : {}),
  };
  if (coded)
    return { message: coded.message, ...place, extensions: { code: 'bad-request', ...coded.extensions } };
  const refused = refusedRequest(error);
  if (refused) return { message: refused.message, extensions: { code: 'bad-request' } };
  if (cause === error) return { message: error.message, ...place, extensions: { code: 'bad-request' } };
  log('error', 'A resolver failed', {
    requestId,
    error: cause instanceof Error ? cause.stack : String(cause),
  });
  return {
    message: `Something went wrong on our side. Try again; if it stays, give us the number ${requestId}.`,
    ...place,
    extensions: { code: 'internal', requestId },
  };
}
