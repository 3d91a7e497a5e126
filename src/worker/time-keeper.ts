import { Injectable } from '@nestjs/common';
import { ChangeRunner } from '../platform/change/change-runner.js';
import { Clock } from '../platform/clock/clock.js';
import { contextOf } from '../platform/context.js';
import { Database } from '../platform/database/database.js';

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

  /** @returns how many companies were looked at. */
  async run(): Promise<number> {
    const now = this.clock.now().getTime();
    const companies = await this.database.company.findMany({
      where: { jobs: { some: { state: { in: ['entered', 'running'] } } } },
      select: { id: true },
      orderBy: { id: 'asc' },
    });
    const due = companies.filter(({ id }) => now - (this.looked.get(id) ?? 0) >= STANDS_MILLISECONDS);
    for (const { id } of due) {
      await this.runner.passTime(
        contextOf({ companyId: id, personId: '', role: 'office', name: 'the clock' }),
      );
      this.looked.set(id, now);
    }
    return due.length;
  }
}
