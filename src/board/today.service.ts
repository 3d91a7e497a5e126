import { Injectable } from '@nestjs/common';
import { instantOfWallClock, wallClockAt } from '../../shared/schedule/zone-time.js';
import { CrewReader } from '../crews/crews.face.js';
import type { Phase, Prisma } from '../generated/prisma/client.js';
import { Clock } from '../platform/clock/clock.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import type { BoardRange } from './board-range.js';
import { doneBy } from './touching.js';

const DAY = 24 * 60 * 60 * 1000;

/** What there is to do now. */
@Injectable()
export class TodayService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly crews: CrewReader,
  ) {}

  /**
   * Phases under way, and those planned to touch today or tomorrow, for one crew, for the crews of the acting person,
   * or, for a person without a crew, for the whole company.
   */
  async today(ctx: Context, crewId: string | null): Promise<Phase[]> {
    const crew = crewId === null ? null : await this.crews.byId(ctx, crewId);
    if (crewId !== null && !crew) return [];
    const crewIds = crew ? [crew.id] : await this.crews.idsOfPerson(ctx, ctx.personId);
    const zone = crew?.zone ?? (await this.companyZone(ctx));
    const { from, to } = todayAndTomorrow(this.clock.now(), zone);
    const due = {
      state: 'waiting',
      planned: { is: { startAt: { lt: to }, finishAt: { gte: from } } },
    } as const;
    return this.database.phase.findMany({
      where: {
        companyId: ctx.companyId,
        job: { state: { in: ['entered', 'running'] } },
        OR: [{ state: 'started' }, due],
        ...(crewIds.length > 0 ? { AND: [{ OR: [doneBy(crewIds), waitAfter(crewIds)] }] } : {}),
      },
      orderBy: [{ state: 'desc' }, { planned: { startAt: 'asc' } }, { id: 'asc' }],
    });
  }

  private async companyZone(ctx: Context): Promise<string> {
    const company = await this.database.company.findUniqueOrThrow({ where: { id: ctx.companyId } });
    return company.zone;
  }
}

/** From last midnight to the one after tomorrow, by the wall clock of a zone. */
export function todayAndTomorrow(now: Date, zone: string): BoardRange {
  const midnight = Math.floor(wallClockAt(now.getTime(), zone) / DAY) * DAY;
  const at = (wall: number): Date => new Date(instantOfWallClock(wall, zone));
  return { from: at(midnight), to: at(midnight + 2 * DAY) };
}

/** A wait, such as a cure, has no crew; it stays on the sheet of the crew that did what it follows. */
function waitAfter(crewIds: readonly string[]): Prisma.PhaseWhereInput {
  return { trade: null, linksTo: { some: { from: { actualCrewId: { in: [...crewIds] } } } } };
}
