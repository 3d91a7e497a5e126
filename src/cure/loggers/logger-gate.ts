import { Injectable } from '@nestjs/common';
import type { Logger } from '../../generated/prisma/client.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import { bearerToken, hashToken } from './logger-token.js';

/** Most posts of one logger in a minute. A logger that reads every five minutes needs one in five. */
export const MOST_POSTS_A_MINUTE = 30;

const MINUTE_MS = 60_000;

/** What the gate says: the logger, or why it does not get in. */
export type GateAnswer =
  | { readonly logger: Logger }
  | { readonly status: 401 | 429; readonly message: string; readonly retryAfterSeconds?: number };

const UNKNOWN =
  'No logger has this token. Send the header "Authorization: Bearer TOKEN" with the token shown when the logger was registered; a revoked logger must be registered again.';

/** Lets a logger in by its token, so many times a minute. A wrong token and a revoked one are answered alike. */
@Injectable()
export class LoggerGate {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async pass(header: string | undefined): Promise<GateAnswer> {
    const token = bearerToken(header);
    const logger = token
      ? await this.database.logger.findUnique({ where: { tokenHash: hashToken(token) } })
      : null;
    if (!logger || logger.revokedAt) return { status: 401, message: UNKNOWN };
    const now = this.clock.now();
    const posts = await this.count(logger.id, now);
    if (posts <= MOST_POSTS_A_MINUTE) return { logger };
    return {
      status: 429,
      message: `More than ${MOST_POSTS_A_MINUTE} posts in a minute; wait a minute and send what is kept in one post.`,
      retryAfterSeconds: MINUTE_MS / 1000,
    };
  }

  /** Counts a post, in one statement so that posts at the same time are all counted. */
  private async count(loggerId: string, now: Date): Promise<number> {
    const begin = new Date(now.getTime() - MINUTE_MS);
    const [row] = await this.database.$queryRaw<{ posts: number }[]>`
      update "Logger" set
        "minutePosts" = case when "minuteFrom" > ${begin} then "minutePosts" + 1 else 1 end,
        "minuteFrom" = case when "minuteFrom" > ${begin} then "minuteFrom" else ${now} end
      where id = ${loggerId}::uuid returning "minutePosts" as posts`;
    return row?.posts ?? 0;
  }
}
