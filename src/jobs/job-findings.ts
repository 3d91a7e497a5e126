import { storedFindings } from '../design/design.face.js';
import type { Job } from '../generated/prisma/client.js';
import { type Finding, findingOf } from '../inspections/inspections.face.js';

/** A finding with the id of who waived it, from which the person is read. */
export type JobFinding = Finding & { readonly waivedById: string | null };

/** What the rules say about a job as measured, with what the office waived. */
export const jobFindings = (job: Job): JobFinding[] =>
  storedFindings(job).map(({ waived, waivedById, waivedAt, ...finding }) => ({
    ...findingOf(finding),
    waived: waived ?? null,
    waivedById: waivedById ?? null,
    waivedAt: waivedAt === undefined ? null : new Date(waivedAt),
  }));
