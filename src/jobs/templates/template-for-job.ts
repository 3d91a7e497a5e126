import { checkTemplate } from '../../../shared/entry/template/check-template.js';
import type { EntryTemplate } from '../../../shared/entry/template/template.js';
import type { Template } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { demandFound } from '../../platform/outcomes/demand.js';
import { InvalidInput } from '../../platform/outcomes/invalid-input.js';
import { NotFound } from '../../platform/outcomes/not-found.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { isRowId } from '../../platform/row-id.js';
import { BUILT_IN_BODY, BUILT_IN_ID, builtInTemplate } from './built-in-template.js';

/** A template's row and what it says. */
export interface TemplateForJob {
  readonly id: string;
  readonly template: EntryTemplate;
}

/**
 * The template a new job is made from: the one asked for, else the company's oldest active one, else the built-in one,
 * which is saved now.
 *
 * @throws Refused with NotFound or InvalidInput
 */
export async function templateForJob(change: Change, id: string | null | undefined): Promise<TemplateForJob> {
  const row = await chosen(change, id ?? null);
  if (!row.active) refuse(`"${row.name}" is out of use; choose an active template.`);
  return { id: row.id, template: readTemplate(row) };
}

/** What the template of a job says as it stands, in use or not. @throws Refused with InvalidInput when it can no longer be read. */
export const templateOfJob = async ({ ctx, tx }: Change, id: string): Promise<EntryTemplate> =>
  readTemplate(await tx.template.findFirstOrThrow({ where: { companyId: ctx.companyId, id } }));

function readTemplate({ name, body }: Template): EntryTemplate {
  const checked = checkTemplate(body);
  if (checked.ok) return checked.template;
  const faults = checked.faults.map(({ path, message }) => `${path}: ${message}`).join(' ');
  return refuse(`"${name}" can no longer be used (${faults}); open it, put this right and save it.`);
}

async function chosen({ ctx, tx }: Change, id: string | null): Promise<Template> {
  const { companyId } = ctx;
  if (id !== null && id !== BUILT_IN_ID) {
    const row = isRowId(id) ? await tx.template.findFirst({ where: { companyId, id } }) : null;
    return demandFound(row, 'template');
  }
  const rows = await tx.template.findMany({ where: { companyId }, orderBy: { id: 'asc' } });
  if (rows.length === 0) {
    const { name } = builtInTemplate(companyId);
    return tx.template.create({ data: { companyId, name, body: BUILT_IN_BODY } });
  }
  if (id === BUILT_IN_ID) throw new Refused(new NotFound('template'));
  return rows.find((row) => row.active) ?? refuse('No template is active; save one or set one active.');
}

function refuse(message: string): never {
  throw new Refused(new InvalidInput([{ path: 'templateId', message }]));
}
