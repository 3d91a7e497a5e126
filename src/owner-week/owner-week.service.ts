import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { heatWords, OWNER_HEAT_CAUTION } from '../../shared/owner-week/heat-words.js';
import { ownerDays } from '../../shared/owner-week/owner-days.js';
import type { SiteDay } from '../../shared/owner-week/owner-facts.js';
import { summaryWords } from '../../shared/owner-week/summary-words.js';
import { walkWords } from '../../shared/owner-week/walk-words.js';
import type { Context } from '../platform/context.js';
import { demandLink, type SheetHead, SheetHeads } from '../signed-links/signed-links.face.js';
import { OwnerFactsReader } from './owner-facts-reader.js';
import type { OwnerWeek } from './owner-week.model.js';

const DAYS = 7;

/** Says the next seven days of a job in plain words to the holder of the owner's link. */
@Injectable()
export class OwnerWeekService {
  constructor(
    private readonly heads: SheetHeads,
    private readonly reader: OwnerFactsReader,
  ) {}

  async week(ctx: Context): Promise<OwnerWeek> {
    const link = demandLink(ctx, 'ownerWeek');
    const head = await this.heads.of(ctx, link);
    const { phases, holds, heat } = await this.reader.of(ctx.companyId, link.jobId);
    const now = head.now.getTime();
    const days = ownerDays(daysFrom(head), phases, holds);
    const say = saying(head.zone);
    return {
      head,
      summary: summaryWords(days, head.jobState === 'entered' ? 'running' : head.jobState),
      days,
      walk: walkWords(phases, now, say),
      heat: heatWords(heat, now, say),
      heatCaution: heat.sets > 0 && heat.energised < heat.sets ? OWNER_HEAT_CAUTION : null,
    };
  }
}

/** Seven days from today on in the zone of the site; a day of a clock change is an hour shorter or longer. */
function daysFrom({ now, zone }: SheetHead): SiteDay[] {
  const today = Temporal.Instant.fromEpochMilliseconds(now.getTime()).toZonedDateTimeISO(zone).toPlainDate();
  const start = (day: Temporal.PlainDate) => day.toZonedDateTime(zone).epochMilliseconds;
  return Array.from({ length: DAYS }, (_, days) => {
    const day = today.add({ days });
    return { date: day.toString(), from: start(day), until: start(day.add({ days: 1 })) };
  });
}

function saying(zone: string): (moment: number) => string {
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    weekday: 'long',
    month: 'long',
    day: 'numeric',
  });
  return (moment) => format.format(moment);
}
