import { storedFindings } from '../design/design.face.js';
import type { Job } from '../generated/prisma/client.js';
import { type Finding, findingOf } from '../inspections/inspections.face.js';

/** What the rules say about a job as measured, with what the office waived. */
export const jobFindings = (job: Job): Finding[] =>
  storedFindings(job).map(({ waived, ...finding }) => ({ ...findingOf(finding), waived: waived ?? null }));
