import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import { checkLimits } from '../../shared/weather/check-limits.js';
import type { WeatherLimit } from '../../shared/weather/weather-limit.js';
import type { Prisma } from '../generated/prisma/client.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { demandRevision } from '../platform/outcomes/demand.js';
import { refuseInput } from '../platform/outcomes/demand-past.js';
import { orLeftOut } from '../platform/outcomes/left-out.js';
import { InvalidInput } from '../platform/outcomes/invalid-input.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { Refused } from '../platform/outcomes/refusal.js';
import { limitSetsInForce } from './limit-sets.js';
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
      const limits = readLimits('limits', input.limits);
      const given = input.requirements ?? null;
      const requirements = given === null ? undefined : readLimits('requirements', given);
      const { companyId } = ctx;
      const rows = await change.tx.weatherLimitSet.findMany({ where: { companyId, key } });
      const before = limitSetsInForce(rows).find((set) => set.key === key);
      demandRevision(before ?? { revision: 0 }, input.revision, 'set of weather limits');
      const stored = {
        limits: asJson(limits),
        ...(requirements ? { requirements: asJson(requirements) } : {}),
      };
      const shown = name ?? before?.name ?? key;
      const set = await change.tx.weatherLimitSet.upsert({
        where: { companyId_key: { companyId, key } },
        create: { companyId, key, name: shown, ...stored },
        update: { name: shown, ...stored, revision: { increment: 1 } },
      });
      change.record({
        action: 'weather limits saved',
        subjectType: 'weatherLimitSet',
        subjectId: set.id,
        detail: { key, ...stored },
      });
      return { key };
    });
  }
}

const asJson = (limits: readonly WeatherLimit[]) => limits as unknown as Prisma.InputJsonArray;

function readLimits(name: string, text: string): readonly WeatherLimit[] {
  const check = checkLimits(fromJson(name, text));
  if (check.ok) return check.limits;
  throw new Refused(
    new InvalidInput(check.faults.map(({ path, message }) => ({ path: `${name}${path}`, message }))),
  );
}

function fromJson(name: string, text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    return refuseInput(name, `is not JSON (${String(error)}). Correct the text and send it again.`);
  }
}
