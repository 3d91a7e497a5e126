import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import { weekHours, zoneName } from '../crews/crews.face.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { InvalidInput } from '../platform/outcomes/invalid-input.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { Refused } from '../platform/outcomes/refusal.js';
import type { CreateAuthorityInput } from './authorities.inputs.js';

const authority = z.object({
  name: z
    .string()
    .trim()
    .min(1, { error: 'must not be empty' })
    .max(120, { error: 'has at most 120 letters' }),
  noticeHours: z
    .number()
    .int()
    .min(0, { error: 'must be 0 or more hours' })
    .max(2000, { error: 'must be at most 2000 hours' }),
  visitMinutes: z
    .number()
    .int()
    .min(15, { error: 'must be 15 or more minutes' })
    .max(480, { error: 'must be at most 480 minutes' }),
  zone: zoneName,
  week: weekHours.refine((week) => Object.values(week).some((hours) => hours.length > 0), {
    error: 'has no visiting hours; give at least one day, or no visit can ever be planned',
  }),
  phone: z
    .string()
    .trim()
    .max(40, { error: 'has at most 40 characters' })
    .nullish()
    .transform((value) => value || null),
});

/** Enters authorities. */
@Injectable()
export class AuthoritiesService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Adds an authority; the name must be free. */
  create(ctx: Context, input: CreateAuthorityInput) {
    return this.changes.run(ctx, { operation: 'createAuthority', input }, async (change) => {
      const { companyId } = ctx;
      const data = parseInput(authority, input);
      if (await change.tx.authority.findFirst({ where: { companyId, name: data.name } })) {
        const message = `There is an authority "${data.name}" already; choose another name.`;
        throw new Refused(new InvalidInput([{ path: 'name', message }]));
      }
      const row = await change.tx.authority.create({ data: { companyId, ...data } });
      change.record({
        action: 'authority added',
        subjectType: 'authority',
        subjectId: row.id,
        detail: { name: row.name },
      });
      return { authorityId: row.id };
    });
  }
}
