import type { ApiClient } from '../../prisma/demo/api-client.js';

/** Something forbidden that was tried, and what the service said. */
export interface Trial {
  readonly at: string;
  readonly tried: string;
  readonly code: string;
  readonly message: string;
}

/** Tries what the trade forbids and keeps the answers. */
export class Trials {
  readonly all: Trial[] = [];

  constructor(private readonly tell: (at: Date, text: string) => void) {}

  /** @throws Error when the service takes it: then something that must be refused was done. */
  async refuse(
    now: Date,
    tried: string,
    client: ApiClient,
    mutation: string,
    input: Record<string, unknown>,
  ): Promise<void> {
    const outcome = await client.change(mutation, input);
    if (!outcome.code || !outcome.message)
      throw new Error(`It should have been refused, but was done: ${tried}`);
    this.all.push({ at: now.toISOString(), tried, code: outcome.code, message: outcome.message });
    this.tell(now, `REFUSED ${tried}: ${outcome.code}. ${outcome.message}`);
  }

  /** How many different refusals there were. */
  get kinds(): number {
    return new Set(this.all.map(({ code }) => code)).size;
  }
}
