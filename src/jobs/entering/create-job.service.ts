import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import { expandTemplate } from '../../../shared/entry/expand/expand-template.js';
import type { EntryMeasurement } from '../../../shared/entry/measurement/measurement.js';
import type { EntryPlanDraft } from '../../../shared/entry/template/draft.js';
import { EntryDesigner, findingsColumn } from '../../design/design.face.js';
import type { Site } from '../../generated/prisma/client.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound } from '../../platform/outcomes/demand.js';
import { InvalidInput } from '../../platform/outcomes/invalid-input.js';
import { orLeftOut } from '../../platform/outcomes/left-out.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { jobName, jobPriority } from '../job-schema.js';
import { templateForJob } from '../templates/template-for-job.js';
import { designFaults } from './design-faults.js';
import { equipmentOfDraft } from './equipment-of-draft.js';
import type { CreateJobInput } from './jobs.inputs.js';
import { findingsOf } from './findings-of.js';
import { readMeasurement } from './read-measurement.js';
import { writeDraft } from './write-draft.js';

const newJob = z.object({ name: jobName, ownerName: jobName, priority: orLeftOut(jobPriority) });

/** Enters a job: measurements and template become phases, links, hold points and all that goes with them. */
@Injectable()
export class CreateJobService {
  constructor(
    private readonly changes: ChangeRunner,
    private readonly designer: EntryDesigner,
  ) {}

  async create(ctx: Context, input: CreateJobInput) {
    // Laying the cable takes seconds: not while the company's other changes wait for this one.
    const findings = await findingsOf(this.designer, input.measurement);
    return this.changes.run(ctx, { operation: 'createJob', input }, async (change) => {
      const { companyId } = ctx;
      const { name, ownerName, priority = 5 } = parseInput(newJob, input);
      const site = demandFound(
        await change.tx.site.findFirst({ where: companyRow(change, input.siteId) }),
        'site',
      );
      const { id: templateId, template } = await templateForJob(change, input.templateId);
      const { entered, measurement } = readMeasurement(input.measurement, site);
      const draft = expandTemplate(template, measurement, { cold: input.coldWeather ?? true });
      demandBuildable(draft, measurement, site);
      const pools = await equipmentOfDraft(change, draft);
      const { jobNumber: number } = await change.tx.company.update({
        where: { id: companyId },
        data: { jobNumber: { increment: 1 } },
        select: { jobNumber: true },
      });
      const job = await change.tx.job.create({
        data: {
          companyId,
          number,
          name,
          ownerName,
          priority,
          siteId: site.id,
          templateId,
          dueAt: input.dueAt ?? null,
          measurement: entered,
          quantities: draft.quantities,
          designFindings: findingsColumn(findings ?? draft.findings),
          createdAt: change.now,
        },
      });
      await writeDraft(change, draft, { jobId: job.id, authorityId: site.authorityId, pools });
      change.record({
        action: 'job entered',
        subjectType: 'job',
        subjectId: job.id,
        jobId: job.id,
        detail: { number, name, phases: draft.phases.length },
      });
      return { jobId: job.id };
    });
  }
}

/** @throws Refused with InvalidInput when the design breaks a rule, or nobody could inspect it. */
function demandBuildable(draft: EntryPlanDraft, measurement: EntryMeasurement, site: Site): void {
  const faults = designFaults(draft.findings, measurement);
  if (draft.inspections.length > 0 && site.authorityId === null) {
    faults.push({
      path: 'siteId',
      message: `${site.address} has no authority to inspect this job; give the site its authority first.`,
    });
  }
  if (faults.length > 0) throw new Refused(new InvalidInput(faults));
}
