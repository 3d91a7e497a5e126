import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { demandFound } from '../platform/outcomes/demand.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import type { ClearCrewExceptionInput, SetCrewExceptionInput } from './crews.inputs.js';
import { demandCrew } from './demand-crew.js';
import { dayHours } from './week-schema.js';

const day = z.iso
  .date({ error: 'must be a date as YYYY-MM-DD' })
  .transform((text) => new Date(`${text}T00:00:00Z`));
const exception = z.object({
  day,
  hours: dayHours,
  reason: z
    .string()
    .trim()
    .min(1, { error: 'must say why the hours differ' })
    .max(200, { error: 'has at most 200 letters' }),
});

/** Days on which a crew's hours differ from its week. */
@Injectable()
export class CrewExceptionsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Sets the hours of one day, instead of what was set before. */
  set(ctx: Context, input: SetCrewExceptionInput) {
    return this.changes.run(ctx, { operation: 'setCrewException', input }, async (change) => {
      const crew = await demandCrew(change, input.crewId);
      const data = parseInput(exception, input);
      await change.tx.crewException.upsert({
        where: { crewId_day: { crewId: crew.id, day: data.day } },
        create: { companyId: ctx.companyId, crewId: crew.id, ...data },
        update: { hours: data.hours, reason: data.reason },
      });
      await change.tx.crew.update({ where: { id: crew.id }, data: { revision: { increment: 1 } } });
      change.record({
        action: 'crew hours of a day set',
        subjectType: 'crew',
        subjectId: crew.id,
        detail: { day: input.day, hours: data.hours },
        reason: data.reason,
      });
      return { crewId: crew.id };
    });
  }

  /** Lets one day follow the week again. */
  clear(ctx: Context, input: ClearCrewExceptionInput) {
    return this.changes.run(ctx, { operation: 'clearCrewException', input }, async (change) => {
      const crew = await demandCrew(change, input.crewId);
      const data = parseInput(z.object({ day }), input);
      const gone = await change.tx.crewException.deleteMany({ where: { crewId: crew.id, day: data.day } });
      demandFound(gone.count || null, 'exception of that day');
      await change.tx.crew.update({ where: { id: crew.id }, data: { revision: { increment: 1 } } });
      change.record({
        action: 'crew hours of a day back to the week',
        subjectType: 'crew',
        subjectId: crew.id,
        detail: { day: input.day },
      });
      return { crewId: crew.id };
    });
  }
}
