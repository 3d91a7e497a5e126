import type { ApiClient, Outcome } from './api-client.js';

/** Thrown when the service refuses what the people at work expect it to take. */
export class UnexpectedRefusal extends Error {
  constructor(
    readonly mutation: string,
    readonly outcome: Outcome,
  ) {
    super(`${mutation} was refused: ${outcome.__typename}: ${outcome.message}`);
    this.name = 'UnexpectedRefusal';
  }
}

/** The people who work on jobs, each signed in, and the clock they live by. */
export interface Hands {
  readonly office: ApiClient;
  readonly foreman: ApiClient;
  readonly electrician: ApiClient;
  /** Moves the service's clock. */
  setClock(at: Date): void;
}

/** Runs a mutation that must succeed. @throws UnexpectedRefusal with the service's own words. */
export async function must(
  client: ApiClient,
  mutation: string,
  input: Record<string, unknown>,
  selection = '',
): Promise<Outcome> {
  const outcome = await client.change(mutation, input, selection);
  if (outcome.code) throw new UnexpectedRefusal(mutation, outcome);
  return outcome;
}
