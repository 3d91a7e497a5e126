import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import { checkTemplate } from '../../../shared/entry/template/check-template.js';
import type { Prisma } from '../../generated/prisma/client.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { InvalidInput } from '../../platform/outcomes/invalid-input.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { isRowId } from '../../platform/row-id.js';
import { parseJsonText } from '../json-text.js';
import { BUILT_IN_ID } from './built-in-template.js';
import type { SaveTemplateInput } from './templates.inputs.js';

const named = z.object({
  name: z
    .string()
    .trim()
    .min(1, { error: 'must not be empty' })
    .max(120, { error: 'has at most 120 letters' }),
});

/** Saves the company's templates. */
@Injectable()
export class TemplatesService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Saves a template after checking it whole; every fault is named. */
  save(ctx: Context, input: SaveTemplateInput) {
    return this.changes.run(ctx, { operation: 'saveTemplate', input }, async (change) => {
      const { tx } = change;
      const { companyId } = ctx;
      const { name } = parseInput(named, input);
      const id = input.templateId && input.templateId !== BUILT_IN_ID ? input.templateId : null;
      const before =
        id === null
          ? null
          : demandFound(
              isRowId(id) ? await tx.template.findFirst({ where: { companyId, id } }) : null,
              'template',
            );
      if (before) demandRevision(before, input.revision, 'template');
      const body = checkedBody(name, input.body);
      const namesake = await tx.template.findFirst({ where: { companyId, name } });
      if (namesake && namesake.id !== before?.id) {
        const message = `There is a template "${name}" already; choose another name.`;
        throw new Refused(new InvalidInput([{ path: 'name', message }]));
      }
      const data = { name, body, active: input.active ?? before?.active ?? true };
      const row = before
        ? await tx.template.update({
            where: { id: before.id },
            data: { ...data, revision: { increment: 1 } },
          })
        : await tx.template.create({ data: { companyId, ...data } });
      change.record({
        action: before ? 'template changed' : 'template added',
        subjectType: 'template',
        subjectId: row.id,
        detail: { name, active: row.active },
      });
      return { templateId: row.id };
    });
  }
}

function checkedBody(name: string, text: string): Prisma.InputJsonObject {
  const value = parseJsonText('body', text);
  const named =
    typeof value === 'object' && value !== null && !Array.isArray(value) ? { ...value, name } : value;
  const checked = checkTemplate(named);
  if (checked.ok) return checked.template as unknown as Prisma.InputJsonObject;
  throw new Refused(
    new InvalidInput(
      checked.faults.map(({ path, message }) => ({ path: path ? `body.${path}` : 'body', message })),
    ),
  );
}
