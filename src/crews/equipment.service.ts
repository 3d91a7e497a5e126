import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { demandRevision } from '../platform/outcomes/demand.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import type { SetEquipmentInput } from './equipment.inputs.js';

const text = (most: number) =>
  z
    .string()
    .trim()
    .min(1, { error: 'must not be empty' })
    .max(most, { error: `has at most ${most} letters` });

const pool = z.object({
  kind: z.string().regex(/^[a-z][a-z0-9-]{0,39}$/, {
    error: 'must be lower-case letters, digits and hyphens, such as blanket',
  }),
  name: text(80),
  unit: text(20),
  quantity: z
    .number()
    .int()
    .min(0, { error: 'must be 0 or more' })
    .max(100_000, { error: 'must be at most 100000' }),
});

/** The company's equipment. */
@Injectable()
export class EquipmentService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Says how much of a kind there is; a new kind is added. */
  set(ctx: Context, input: SetEquipmentInput) {
    return this.changes.run(ctx, { operation: 'setEquipment', input }, async (change) => {
      const { companyId } = ctx;
      const { kind, ...data } = parseInput(pool, input);
      const where = { companyId_kind: { companyId, kind } };
      const existing = await change.tx.equipmentPool.findUnique({ where });
      if (existing) demandRevision(existing, input.revision, 'equipment');
      const row = await change.tx.equipmentPool.upsert({
        where,
        create: { companyId, kind, ...data },
        update: { ...data, revision: { increment: 1 } },
      });
      change.record({
        action: existing ? 'equipment changed' : 'equipment added',
        subjectType: 'equipmentPool',
        subjectId: row.id,
        detail: { kind, ...data, before: existing?.quantity ?? null },
      });
      return { poolId: row.id };
    });
  }
}
