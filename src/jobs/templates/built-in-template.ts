import { HEATED_ENTRY } from '../../../shared/entry/template/default/heated-entry.js';
import type { Prisma, Template } from '../../generated/prisma/client.js';

/** Id under which a company without templates sees the built-in one; a job's first use saves it under an id of its own. */
export const BUILT_IN_ID = 'built-in';

/** The built-in template's body as stored. */
export const BUILT_IN_BODY = HEATED_ENTRY as unknown as Prisma.InputJsonObject;

/** The built-in template as a company sees it that has none. */
export function builtInTemplate(companyId: string): Template {
  return {
    id: BUILT_IN_ID,
    companyId,
    name: HEATED_ENTRY.name,
    body: BUILT_IN_BODY as Prisma.JsonObject,
    active: true,
    revision: 0,
  };
}
