import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import { TRADES } from '../../shared/entry/template/words.js';
import type { Change } from '../platform/change/change.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { given } from '../platform/given.js';
import { demandRevision } from '../platform/outcomes/demand.js';
import { InvalidInput } from '../platform/outcomes/invalid-input.js';
import { orLeftOut } from '../platform/outcomes/left-out.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { Refused } from '../platform/outcomes/refusal.js';
import type { CreateCrewInput, UpdateCrewInput } from './crews.inputs.js';
import { setMembers } from './crew-members.js';
import { demandCrew } from './demand-crew.js';
import { weekHours } from './week-schema.js';
import { zoneName } from './zone-name.js';

const crewTrades = TRADES.filter((trade) => trade !== 'authority');

const name = z
  .string()
  .trim()
  .min(1, { error: 'must not be empty' })
  .max(80, { error: 'has at most 80 letters' });
const trades = z
  .array(z.enum(crewTrades, { error: `must be one of ${crewTrades.join(', ')}` }))
  .min(1, { error: 'names no trade; give at least one, or the plan can never use the crew' })
  .transform((list) => [...new Set(list)]);
const size = z
  .number()
  .int()
  .min(1, { error: 'must be 1 or more people' })
  .max(60, { error: 'must be at most 60 people' });

const newCrew = z.object({ name, trades, size, zone: zoneName, week: weekHours });
const changedCrew = z.object({
  name: orLeftOut(name),
  trades: orLeftOut(trades),
  size: orLeftOut(size),
  zone: orLeftOut(zoneName),
  week: orLeftOut(weekHours),
  active: orLeftOut(z.boolean()),
});

/** Enters and changes crews. */
@Injectable()
export class CrewsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Adds a crew; the name must be free. */
  create(ctx: Context, input: CreateCrewInput) {
    return this.changes.run(ctx, { operation: 'createCrew', input }, async (change) => {
      const data = parseInput(newCrew, input);
      await demandFreeName(change, data.name);
      const crew = await change.tx.crew.create({ data: { companyId: ctx.companyId, ...data } });
      await setMembers(change, crew.id, input.memberIds ?? []);
      change.record({
        action: 'crew added',
        subjectType: 'crew',
        subjectId: crew.id,
        detail: { name: crew.name },
      });
      return { crewId: crew.id };
    });
  }

  /** Changes what is given; hours and trades count from the next plan on. */
  update(ctx: Context, input: UpdateCrewInput) {
    return this.changes.run(ctx, { operation: 'updateCrew', input }, async (change) => {
      const crew = await demandCrew(change, input.crewId);
      demandRevision(crew, input.revision, 'crew');
      const data = given(parseInput(changedCrew, input));
      if (data.name !== undefined && data.name !== crew.name) await demandFreeName(change, data.name);
      await change.tx.crew.update({ where: { id: crew.id }, data: { ...data, revision: { increment: 1 } } });
      if (input.memberIds) await setMembers(change, crew.id, input.memberIds);
      change.record({ action: 'crew changed', subjectType: 'crew', subjectId: crew.id, detail: data });
      return { crewId: crew.id };
    });
  }
}

async function demandFreeName({ ctx, tx }: Change, wanted: string): Promise<void> {
  const other = await tx.crew.findFirst({ where: { companyId: ctx.companyId, name: wanted } });
  if (other)
    throw new Refused(
      new InvalidInput([
        { path: 'name', message: `There is a crew "${wanted}" already; choose another name.` },
      ]),
    );
}
