import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { HoldPointItem } from '../../shared/entry/hold-points/item.js';
import { published } from '../../shared/entry/source.js';
import type { HoldPoint, Phase } from '../../src/generated/prisma/client.js';
import type { ApiClient } from '../support/api-client.js';
import { confirmItem, RunningJob, type StepOutcome } from '../support/running-job.js';
import { startService, type TestService } from '../support/service.js';

/** Bottom of a footing at least 12 in below undisturbed ground. */
const DEPTH: HoldPointItem = {
  id: 'depth',
  label: 'Depth of the bottom',
  unit: 'in',
  limit: { atLeast: 12 },
  required: true,
  source: published('IRC R403.1.4'),
};

describe('an intent that decides a hold point', () => {
  let service: TestService;
  let job: RunningJob;
  let phase: Phase;
  let point: HoldPoint;

  beforeAll(async () => {
    service = await startService();
  });
  beforeEach(async () => {
    job = await RunningJob.make(service);
    phase = await job.phase('Pour', { requiredCrewId: job.mason.id });
    point = await job.holdPoint(phase, 'Bottom', { items: [DEPTH, confirmItem('dry')] });
  });
  afterAll(() => service.stop());

  const at = (inches: number) => [
    { itemId: 'depth', value: inches },
    { itemId: 'dry', confirmed: true },
  ];
  const decide = (decision: string, more: object = {}, who: ApiClient = job.foreman): Promise<StepOutcome> =>
    who.change(
      'decideHoldPoint',
      { fromOutbox: true, holdPointId: point.id, decision, seen: 'open', revision: 1, values: [], ...more },
      `... on HoldPointSettled { answer holdPoint { state revision } }
       ... on LimitExceeded { findings { rule ok } }
       ... on FieldConflict { field theirs mine standing changedBy currentRevision }`,
    );

  it('is applied on what was measured', async () => {
    expect(await decide('released', { values: at(14), remark: 'by tape' })).toMatchObject({
      answer: 'applied',
      holdPoint: { state: 'released', revision: 2 },
    });
    expect(await job.holdPointNow(point)).toMatchObject({ state: 'released', reason: 'by tape' });
  });

  it('is already applied when somebody measured and decided the same', async () => {
    await decide('released', { values: at(14) }, job.office);
    expect(await decide('released', { values: at(14).toReversed() })).toMatchObject({
      answer: 'alreadyApplied',
      holdPoint: { revision: 2 },
    });
  });

  it('is a conflict with both decisions and their values', async () => {
    await decide('refused', { values: [{ itemId: 'depth', value: 10 }], remark: 'Too shallow' }, job.office);
    expect(await decide('released', { values: at(14) })).toMatchObject({
      code: 'FieldConflict',
      field: 'decision on Bottom',
      theirs: 'refused; Depth of the bottom: 10 in; remark: Too shallow',
      mine: 'released; Depth of the bottom: 14 in; Check of dry: yes',
      standing: 'refused',
      changedBy: job.people.office.name,
      currentRevision: 2,
    });
    expect(await job.holdPointNow(point)).toMatchObject({ state: 'refused' });
  });

  it('takes the place of the other decision once the person has seen and chosen', async () => {
    await decide('released', { values: at(13) }, job.office);
    const { standing, currentRevision } = await decide('released', { values: at(14) });
    const chosen = { seen: standing, revision: currentRevision, values: at(14) };
    expect(await decide('released', chosen)).toMatchObject({ answer: 'applied', holdPoint: { revision: 3 } });
    expect((await job.holdPointNow(point)).measured).toMatchObject([{ value: 14 }, { confirmed: true }]);
  });

  it('is a conflict again when a third decision came between seeing and choosing', async () => {
    await decide('released', { values: at(13) }, job.office);
    const { standing, currentRevision } = await decide('released', { values: at(14) });
    await decide('released', { values: at(15), seen: 'released', revision: 2 }, job.office);
    expect(
      await decide('released', { seen: standing, revision: currentRevision, values: at(14) }),
    ).toMatchObject({
      code: 'FieldConflict',
      theirs: expect.stringContaining('15 in'),
    });
  });

  it('follows on an own one of the same phone, whose answer was never seen', async () => {
    await decide('refused', { remark: 'Water in it' });
    expect(await decide('released', { values: at(14), seen: 'refused' })).toMatchObject({
      answer: 'applied',
    });
  });

  it('is refused outside the limits, and stays so under its key', async () => {
    const clientKey = randomUUID();
    const first = await decide('released', { values: at(11), clientKey });
    expect(first).toMatchObject({
      code: 'LimitExceeded',
      findings: [{ rule: 'depth', ok: false }, { ok: true }],
    });
    expect(await decide('released', { values: at(11), clientKey })).toEqual(first);
  });

  it('is refused where the gate is passed, whatever was seen', async () => {
    await decide('released', { values: at(14) });
    await job.start(phase);
    const again = { seen: 'released', revision: 2, values: at(15) };
    expect(await decide('released', again)).toMatchObject({
      code: 'WrongState',
      message: expect.stringContaining('has passed this gate'),
    });
  });

  it('is refused without a remark that says what is wrong', async () => {
    expect(await decide('refused')).toMatchObject({
      code: 'InvalidInput',
      message: expect.stringMatching(/say what is wrong/),
    });
  });

  it('never takes the place of the authority', async () => {
    const { holdPoint } = await job.inspection(phase);
    expect(await decide('released', { holdPointId: holdPoint.id })).toMatchObject({
      code: 'InspectionOutstanding',
    });
    expect(await decide('refused', { holdPointId: holdPoint.id, remark: 'Looks bad' })).toMatchObject({
      code: 'WrongState',
    });
  });
});
