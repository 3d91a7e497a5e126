import { Injectable } from '@nestjs/common';
import { ChangeRunner } from '../platform/change/change-runner.js';
import { Clock } from '../platform/clock/clock.js';
import { contextOf } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { log } from '../platform/log.js';

/** How long a plan may stand without anybody changing anything. */
const STANDS_MILLISECONDS = 60 * 60_000;

/**
 * Plans every company that has live jobs anew when an hour has passed, although nothing happened there: what was to
 * start yesterday and did not starts today at the earliest, and waits run out.
 */
@Injectable()
export class TimeKeeper {
  /** When each company was last looked at by this process. */
  private readonly looked = new Map<string, number>();

  constructor(
    private readonly database: Database,
    private readonly runner: ChangeRunner,
    private readonly clock: Clock,
  ) {}

  /** @returns how many companies were looked at, those included whose look failed. */
  async run(): Promise<number> {
    const now = this.clock.now().getTime();
    const companies = await this.database.company.findMany({
      where: { jobs: { some: { state: { in: ['entered', 'running'] } } } },
      select: { id: true },
      orderBy: { id: 'asc' },
    });
    const due = companies.filter(({ id }) => now - (this.looked.get(id) ?? 0) >= STANDS_MILLISECONDS);
    for (const { id } of due) {
      this.looked.set(id, now);
      await this.look(id);
    }
    return due.length;
  }

  /** A company that cannot be planned is logged and must not keep the others waiting; it comes again in an hour. */
  private async look(companyId: string): Promise<void> {
    try {
      await this.runner.passTime(contextOf({ companyId, personId: '', role: 'office', name: 'the clock' }));
    } catch (error) {
      log('error', 'A company could not be planned anew', {
        companyId,
        error: error instanceof Error ? (error.stack ?? error.message) : String(error),
      });
    }
  }
}
