import { Injectable } from '@nestjs/common';
import { WrongState } from '../../phases/phases.face.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { Refusal, Refused } from '../../platform/outcomes/refusal.js';
import { hashToken, makeToken } from './logger-token.js';
import { loggerSchema, type RegisterLoggerInput, type RevokeLoggerInput } from './loggers.inputs.js';
import type { LoggerChanged, LoggerRegistered } from './loggers.outcomes.js';

/** Where loggers post. */
export const READINGS_PATH = '/loggers/readings';

/** Registers loggers and takes their tokens back. */
@Injectable()
export class LoggersService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Registers a logger. The stored answer, which a repetition gets, never holds the token. */
  async register(ctx: Context, input: RegisterLoggerInput): Promise<LoggerRegistered | Refusal> {
    let token: string | null = null;
    const outcome = await this.changes.run(ctx, { operation: 'registerLogger', input }, async (change) => {
      const { name } = parseInput(loggerSchema, input);
      const site = demandFound(
        await change.tx.site.findFirst({ where: companyRow(change, input.siteId) }),
        'site',
      );
      const placement = input.placementId
        ? demandFound(
            await change.tx.placement.findFirst({
              where: { ...companyRow(change, input.placementId), job: { siteId: site.id } },
            }),
            'placement',
          )
        : null;
      const made = makeToken();
      const logger = await change.tx.logger.create({
        data: {
          companyId: ctx.companyId,
          siteId: site.id,
          placementId: placement?.id ?? null,
          name,
          tokenHash: hashToken(made),
          createdAt: change.now,
          createdById: ctx.personId || null,
        },
      });
      change.record({
        action: 'logger registered',
        subjectType: 'logger',
        subjectId: logger.id,
        jobId: placement?.jobId ?? null,
        detail: { name, site: site.address },
      });
      token = made;
      return { loggerId: logger.id };
    });
    return outcome instanceof Refusal ? outcome : { ...outcome, token, path: READINGS_PATH };
  }

  /** Takes the token back; it opens nothing from then on. */
  revoke(ctx: Context, input: RevokeLoggerInput): Promise<LoggerChanged | Refusal> {
    return this.changes.run(ctx, { operation: 'revokeLogger', input }, async (change) => {
      const logger = demandFound(
        await change.tx.logger.findFirst({
          where: companyRow(change, input.loggerId),
          include: { placement: { select: { jobId: true } } },
        }),
        'logger',
      );
      demandRevision(logger, input.revision, 'logger');
      if (logger.revokedAt)
        throw new Refused(
          new WrongState('revoked', `${logger.name} was revoked before; nothing is left to do.`),
        );
      await change.tx.logger.update({
        where: { id: logger.id },
        data: { revokedAt: change.now, revokedById: ctx.personId || null, revision: { increment: 1 } },
      });
      change.record({
        action: 'logger revoked',
        subjectType: 'logger',
        subjectId: logger.id,
        jobId: logger.placement?.jobId ?? null,
        detail: { name: logger.name },
      });
      return { loggerId: logger.id };
    });
  }
}
