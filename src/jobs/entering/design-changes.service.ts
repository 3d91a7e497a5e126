import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import type { EntryMeasurement } from '../../../shared/entry/measurement/measurement.js';
import { areaQuantities } from '../../../shared/entry/quantities/area-quantities.js';
import { jobQuantities } from '../../../shared/entry/quantities/job-quantities.js';
import { designFindings } from '../../../shared/entry/rules/design-findings.js';
import { mayWaive } from '../../../shared/entry/rules/may-waive.js';
import { checkMeasurement } from '../../../shared/entry/measurement/check-measurement.js';
import {
  EntryDesigner,
  findingsColumn,
  storedFindings,
  type StoredFinding,
  type StoredWaiver,
} from '../../design/design.face.js';
import type { Prisma } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { InvalidInput } from '../../platform/outcomes/invalid-input.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { NotWaivable } from '../../inspections/inspections.face.js';
import { demandJob, demandLive } from '../demand-job.js';
import { reasonText } from '../reason-schema.js';
import { correctDurations } from './correct-durations.js';
import { designFaults } from './design-faults.js';
import { findingsOf } from './findings-of.js';
import { heatingSetRow } from './heating-set-row.js';
import type { CorrectMeasurementInput, WaiveFindingInput } from './jobs.inputs.js';
import { readMeasurement } from './read-measurement.js';

const why = z.object({ reason: reasonText });

/** What the office does about a broken rule of a design: corrects the measurement, or goes on against it by reason. */
@Injectable()
export class DesignChangesService {
  constructor(
    private readonly changes: ChangeRunner,
    private readonly designer: EntryDesigner,
  ) {}

  /** Takes another sheet for the same areas and sets: quantities, and what waits for work by them, follow it; links stay. */
  async correct(ctx: Context, input: CorrectMeasurementInput) {
    const laid = await findingsOf(this.designer, input.measurement);
    return this.changes.run(ctx, { operation: 'correctMeasurement', input }, async (change) => {
      const { reason } = parseInput(why, input);
      const job = await demandJob(change, input.jobId);
      demandRevision(job, input.revision, 'job');
      demandLive(job);
      const site = demandFound(await change.tx.site.findUnique({ where: { id: job.siteId } }), 'site');
      const { entered, measurement } = readMeasurement(input.measurement, site);
      const before = demandSameParts(job.measurement, measurement);
      const faults = designFaults(designFindings(measurement), measurement);
      if (faults.length > 0) throw new Refused(new InvalidInput(faults));
      const findings = keepWaivers(laid ?? designFindings(measurement), storedFindings(job));
      await change.tx.job.update({
        where: { id: job.id },
        data: {
          measurement: entered,
          quantities: jobQuantities(measurement),
          designFindings: findingsColumn(findings),
          revision: { increment: 1 },
        },
      });
      for (const area of measurement.areas)
        await change.tx.area.updateMany({
          where: { jobId: job.id, key: area.key },
          data: { name: area.name, quantities: areaQuantities(area, measurement) },
        });
      // What was delivered keeps the label that was read off it.
      for (const set of measurement.heatingSets)
        await change.tx.heatingSet.updateMany({
          where: { jobId: job.id, key: set.key, receivedAt: null },
          data: heatingSetRow(set),
        });
      const durations = await correctDurations(change, job, before, measurement);
      change.record({
        action: 'measurement corrected',
        subjectType: 'job',
        subjectId: job.id,
        jobId: job.id,
        detail: { broken: findings.filter(({ ok }) => !ok).map(({ text }) => text), ...durations },
        reason,
      });
      return { jobId: job.id };
    });
  }

  /** Goes on against a broken rule that the trade made. */
  waive(ctx: Context, input: WaiveFindingInput) {
    return this.changes.run(ctx, { operation: 'waiveFinding', input }, async (change) => {
      const { reason } = parseInput(why, input);
      const job = await demandJob(change, input.jobId);
      demandLive(job);
      const findings = storedFindings(job);
      const meant = (one: StoredFinding) => !one.ok && one.rule === input.rule && one.text === input.text;
      const finding = demandFound(findings.find(meant) ?? null, 'finding');
      if (!mayWaive(finding)) {
        const how = 'Only what the trade or common practice asks for is waived; correct the measurement.';
        throw new Refused(new NotWaivable(`${finding.text}. ${how}`));
      }
      await change.tx.job.update({
        where: { id: job.id },
        data: {
          designFindings: findingsColumn(
            findings.map((one) => (meant(one) ? { ...one, ...waiverOf(change, reason) } : one)),
          ),
          revision: { increment: 1 },
        },
      });
      change.record({
        action: 'finding waived',
        subjectType: 'job',
        subjectId: job.id,
        jobId: job.id,
        detail: { rule: finding.rule, text: finding.text, measured: finding.measured, limit: finding.limit },
        reason,
      });
      return { jobId: job.id };
    });
  }
}

/** A waiver holds for the value it was given for, and for no other. */
const keepWaivers = (
  findings: readonly StoredFinding[],
  earlier: readonly StoredFinding[],
): StoredFinding[] =>
  findings.map((finding) => {
    const before = earlier.find(
      (one) => one.rule === finding.rule && one.text === finding.text && one.measured === finding.measured,
    );
    if (before?.waived === undefined) return finding;
    const { waived, waivedById, waivedAt } = before;
    return { ...finding, waived, ...(waivedById && { waivedById }), ...(waivedAt && { waivedAt }) };
  });

const waiverOf = ({ ctx, now }: Change, reason: string): StoredWaiver => ({
  waived: reason,
  ...(ctx.personId && { waivedById: ctx.personId }),
  waivedAt: now.toISOString(),
});

/**
 * What was measured before. @throws Refused with InvalidInput when the sheet has other areas or sets: the job's phases
 * were made for these.
 */
function demandSameParts(stored: Prisma.JsonValue, measurement: EntryMeasurement): EntryMeasurement {
  const before = checkMeasurement(stored);
  if (before.ok && partsOf(before.measurement) === partsOf(measurement)) return before.measurement;
  const message =
    'must have the areas and heating sets that the job was entered with: its phases were made for them. Enter a new job for other ones.';
  throw new Refused(new InvalidInput([{ path: 'measurement', message }]));
}

const partsOf = ({ areas, heatingSets, footing }: EntryMeasurement): string =>
  JSON.stringify([
    areas.map(({ key, kind, heated }) => [key, kind, heated]),
    heatingSets.map((set) => [set.key, set.areas]),
    footing === null,
  ]);
