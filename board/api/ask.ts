import type { TypedDocumentString } from './documents.js';

/** Why a question to the service got no answer. */
export type AskFault = 'unreachable' | 'signed-out' | 'not-allowed' | 'bad-request' | 'failed';

/** The service gave no data; the message says what to do. */
export class AskError extends Error {
  constructor(
    readonly fault: AskFault,
    message: string,
  ) {
    super(message);
    this.name = 'AskError';
  }
}

/** Event on the window: the service no longer knows who asks. */
export const SIGNED_OUT = 'flagway:signed-out';

interface Answer<R> {
  readonly data?: R | null;
  readonly errors?: readonly { readonly message: string; readonly extensions?: { readonly code?: string } }[];
}

const FAULTS: Readonly<Record<string, AskFault>> = {
  'not-signed-in': 'signed-out',
  'not-allowed': 'not-allowed',
  'bad-request': 'bad-request',
};

/** Pages of signed links; they ask by that link, whoever is signed in beside it. */
const OF_LINK = /^\/(?:sheet|week)\/([\w-]+)$/;

/** The header that says so; see the service's `LINK_HEADER`. */
const linkHeader = (): Record<string, string> => {
  const linkId = OF_LINK.exec(location.pathname)?.[1];
  return linkId ? { 'flagway-link': linkId } : {};
};

/**
 * Sends one document to the service.
 *
 * @throws AskError when the service cannot be reached or refuses to answer.
 */
export async function ask<R, V>(
  document: TypedDocumentString<R, V>,
  variables: V,
  signal: AbortSignal | null = null,
): Promise<R> {
  const answer = await post<R>(document.toString(), variables, signal);
  const [error] = answer.errors ?? [];
  if (error) {
    const fault = FAULTS[error.extensions?.code ?? ''] ?? 'failed';
    if (fault === 'signed-out') dispatchEvent(new Event(SIGNED_OUT));
    throw new AskError(fault, error.message);
  }
  if (!answer.data) throw new AskError('failed', 'The service gave an empty answer. Try again.');
  return answer.data;
}

async function post<R>(query: string, variables: unknown, signal: AbortSignal | null): Promise<Answer<R>> {
  try {
    const response = await fetch('/graphql', {
      method: 'POST',
      headers: { 'content-type': 'application/json', ...linkHeader() },
      body: JSON.stringify({ query, variables }),
      signal,
    });
    return (await response.json()) as Answer<R>;
  } catch (error) {
    const why = error instanceof SyntaxError ? 'answered with something unreadable' : 'cannot be reached';
    throw new AskError('unreachable', `The service ${why}. Check the connection and try again.`);
  }
}
