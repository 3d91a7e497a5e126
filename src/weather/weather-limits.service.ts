import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import type { Prisma } from '../generated/prisma/client.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { demandRevision } from '../platform/outcomes/demand.js';
import { refuseInput } from '../platform/outcomes/demand-past.js';
import { orLeftOut } from '../platform/outcomes/left-out.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { limitSetsInForce } from './limit-sets.js';
import { limitsSchema } from './limits-schema.js';
import type { SaveWeatherLimitsInput } from './weather.inputs.js';

const named = z.object({
  key: z.string().regex(/^[a-z][a-z0-9-]{0,39}$/, {
    error: 'must be 1 to 40 small letters, digits and hyphens, beginning with a letter',
  }),
  name: orLeftOut(
    z.string().trim().min(1, { error: 'must not be empty' }).max(80, { error: 'has at most 80 letters' }),
  ),
});

/** Keeps a company's own weather limits. */
@Injectable()
export class WeatherLimitsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Saves the limits of a kind of work; the plan uses them at once. */
  save(ctx: Context, input: SaveWeatherLimitsInput) {
    return this.changes.run(ctx, { operation: 'saveWeatherLimits', input }, async (change) => {
      const { key, name } = parseInput(named, input);
      const { limits } = parseInput(z.object({ limits: limitsSchema }), { limits: fromJson(input.limits) });
      const { companyId } = ctx;
      const rows = await change.tx.weatherLimitSet.findMany({ where: { companyId, key } });
      const before = limitSetsInForce(rows).find((set) => set.key === key);
      demandRevision(before ?? { revision: 0 }, input.revision, 'set of weather limits');
      const stored = limits as unknown as Prisma.InputJsonArray;
      const shown = name ?? before?.name ?? key;
      const set = await change.tx.weatherLimitSet.upsert({
        where: { companyId_key: { companyId, key } },
        create: { companyId, key, name: shown, limits: stored },
        update: { name: shown, limits: stored, revision: { increment: 1 } },
      });
      change.record({
        action: 'weather limits saved',
        subjectType: 'weatherLimitSet',
        subjectId: set.id,
        detail: { key, limits: stored },
      });
      return { key };
    });
  }
}

function fromJson(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    return refuseInput('limits', `is not JSON (${String(error)}). Correct the text and send it again.`);
  }
}
