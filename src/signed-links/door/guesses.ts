import { Injectable } from '@nestjs/common';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import { hashToken } from '../opaque-token.js';

/** How many links that nobody made one address of the network may try in a minute. */
export const MOST_GUESSES_A_MINUTE = 20;

const MINUTE_MS = 60_000;

/**
 * Slows down whoever tries links at random. A link that exists is never counted, so that a house behind one address can
 * open as many as it was sent.
 */
@Injectable()
export class Guesses {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** Whether an address has guessed too often and must wait for a minute. */
  async tooMany(address: string): Promise<boolean> {
    const row = await this.database.linkGuesses.findUnique({ where: { address: hashToken(address) } });
    const begin = new Date(this.clock.now().getTime() - MINUTE_MS);
    return row !== null && row.minuteFrom > begin && row.guesses >= MOST_GUESSES_A_MINUTE;
  }

  /** Counts a link that nobody made, in one statement so that tries at the same time are all counted. */
  async count(address: string): Promise<void> {
    const now = this.clock.now();
    const begin = new Date(now.getTime() - MINUTE_MS);
    await this.database.$executeRaw`delete from "LinkGuesses" where "minuteFrom" <= ${begin}`;
    await this.database.$executeRaw`
      insert into "LinkGuesses" (address, "minuteFrom", guesses) values (${hashToken(address)}, ${now}, 1)
      on conflict (address) do update set guesses = "LinkGuesses".guesses + 1`;
  }
}
