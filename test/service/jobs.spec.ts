import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { expandTemplate } from '../../shared/entry/expand/expand-template.js';
import { HEATED_ENTRY } from '../../shared/entry/template/default/heated-entry.js';
import { checkedEntry } from '../../shared/entry/testing/checked-entry.js';
import { entryFixture, type Loose } from '../../shared/entry/testing/entry-fixture.js';
import { TEST_PASSWORD } from '../support/company.js';
import { makeOffice, type Office } from '../support/office.js';
import { startService, type TestService } from '../support/service.js';

interface Outcome {
  __typename: string;
  message?: string;
  state?: string;
  job?: {
    id: string;
    number: number;
    name: string;
    priority: number;
    dueAt: string | null;
    state: string;
    revision: number;
  };
  faults?: { path: string; message: string }[];
  what?: string;
}

const JOB = '... on JobChanged { job { id number name priority dueAt state revision } }';
const REFUSALS = '... on InvalidInput { faults { path message } } ... on NotFound { what }';
const MISSING = '019b0000-0000-7000-8000-000000000000';

describe('jobs', () => {
  let service: TestService;
  let mine: Office;
  let theirs: Office;

  beforeAll(async () => {
    service = await startService();
    mine = await makeOffice(service);
    theirs = await makeOffice(service, 'Tamarack Stone');
  });
  afterAll(() => service.stop());

  const create = (change: (entry: Loose) => void = () => undefined, more: object = {}) => {
    const entry = entryFixture();
    change(entry);
    const input = {
      siteId: mine.siteId,
      name: 'Larch Street',
      ownerName: 'R. Alder',
      measurement: JSON.stringify(entry),
      ...more,
    };
    return mine.client.change<Outcome>('createJob', input, `${JOB} ${REFUSALS}`);
  };
  const change = (name: string, input: object) =>
    mine.client.change<Outcome>(
      name,
      input as Record<string, unknown>,
      `${JOB} ${REFUSALS} ... on WrongState { state }`,
    );

  describe('entered from measurements', () => {
    const draft = expandTemplate(HEATED_ENTRY, checkedEntry());

    it('have every row that the template gives for the areas, tied to each other', async () => {
      const { job } = await create();
      const where = { jobId: job?.id ?? '' };
      const { database } = service;
      const counts = {
        areas: await database.area.count({ where }),
        phases: await database.phase.count({ where }),
        links: await database.link.count({ where }),
        holdPoints: await database.holdPoint.count({ where }),
        clearances: await database.clearance.count({ where }),
        inspections: await database.inspection.count({ where: { ...where, authorityId: mine.authorityId } }),
        heatingSets: await database.heatingSet.count({ where }),
        hookups: await database.hookup.count({ where }),
        equipmentHolds: await database.equipmentHold.count({ where: { from: where } }),
      };
      expect(counts).toEqual(
        Object.fromEntries(Object.keys(counts).map((key) => [key, draft[key as 'areas'].length])),
      );
      expect(counts.phases).toBeGreaterThan(20);
    });

    it('keep the durations, links and gates of the draft', async () => {
      const { job } = await create();
      const rows = await service.database.phase.findMany({
        where: { jobId: job?.id ?? '' },
        include: { linksTo: { include: { from: true } }, holdPoints: true, area: true },
      });
      for (const phase of draft.phases) {
        const row = rows.find(({ key }) => key === phase.key);
        expect(row).toMatchObject({
          kind: phase.kind,
          trade: phase.trade,
          durationKind: phase.durationKind,
          durationMinutes: phase.durationMinutes,
          continuity: phase.continuity,
          origin: 'template',
          state: 'waiting',
        });
        expect(row?.area?.key ?? null).toBe(phase.areaKey);
        const from = draft.links
          .filter(({ to }) => to === phase.key)
          .map((link) => `${link.from} ${link.kind} ${link.lagMinutes} ${link.lagIn}`);
        expect(
          row?.linksTo.map((link) => `${link.from.key} ${link.kind} ${link.lagMinutes} ${link.lagIn}`).sort(),
        ).toEqual(from.sort());
        const points = draft.holdPoints.filter(({ phaseKey }) => phaseKey === phase.key);
        expect(row?.holdPoints.map(({ key }) => key).sort()).toEqual(points.map(({ key }) => key).sort());
      }
    });

    it('tie each hold point to what releases it: inspection, clearance, reading, or the placement that cures', async () => {
      const { job } = await create();
      const points = await service.database.holdPoint.findMany({ where: { jobId: job?.id ?? '' } });
      const of = (kind: string) => points.filter((point) => point.kind === kind);
      expect(of('inspection').length).toBeGreaterThanOrEqual(3);
      expect(of('inspection').every(({ inspectionId, waivable }) => inspectionId !== null && !waivable)).toBe(
        true,
      );
      expect(of('clearance').every(({ clearanceId }) => clearanceId !== null)).toBe(true);
      expect(
        of('reading').every(
          ({ heatingSetId, readingStage, waivable }) => heatingSetId && readingStage && !waivable,
        ),
      ).toBe(true);
      expect(of('cure').every(({ placementPhaseId }) => placementPhaseId !== null)).toBe(true);
    });

    it('carry the strength that a cure must reach among the items of its hold point', async () => {
      const { job } = await create();
      const point = await service.database.holdPoint.findFirstOrThrow({
        where: { jobId: job?.id ?? '', key: 'footing-strength' },
      });
      expect(point.items).toMatchObject([{ id: 'strength', unit: 'psi', limit: { atLeast: 1000 } }]);
    });

    it('run one heating set through its areas in turn', async () => {
      const { job } = await create();
      const set = await service.database.heatingSet.findFirstOrThrow({
        where: { jobId: job?.id ?? '' },
        include: { areas: { include: { area: true }, orderBy: { position: 'asc' } }, hookup: true },
      });
      expect(set.areas.map(({ area }) => area.key)).toEqual(['landing', 'steps', 'walk']);
      expect(set).toMatchObject({ watts: 3000, volts: 240, ohms: 19.2, receivedAt: null });
      expect(set.hookup).toMatchObject({ state: 'waiting' });
    });

    it('are numbered one after the other and start as entered', async () => {
      const first = await create();
      const second = await create();
      expect(second.job?.number).toBe((first.job?.number ?? 0) + 1);
      expect(second.job).toMatchObject({ state: 'entered', priority: 5, dueAt: null, revision: 1 });
    });

    it('show the measurements as entered, and the quantities with their units', async () => {
      const { job } = await create();
      const shown = await mine.client.data<{
        job: {
          measurement: string;
          quantities: { key: string; value: number; unit: string }[];
          findings: { ok: boolean; blocks: string[] | null }[];
          buyList: { key: string; pieces: number; soldAs: string; mark: string; source: string }[];
        };
      }>(
        'query($id: ID!) { job(id: $id) { measurement quantities { key label value unit } findings { rule ok text mark source blocks } buyList { key pieces soldAs mark source } } }',
        { id: job?.id },
      );
      expect(JSON.parse(shown.job.measurement)).toEqual(entryFixture());
      // Landing 5 × 7 ft and walk 12 × 4 ft are 83 ft² flat; four treads of 1 × 5 ft less the landing's own: 3 × 5 = 15.
      expect(shown.job.quantities).toContainEqual({
        key: 'heatedSquareFeet',
        label: 'Heated area',
        value: 98,
        unit: 'sq ft',
      });
      expect(shown.job.findings.length).toBeGreaterThan(5);
      expect(shown.job.findings.every(({ ok, blocks }) => ok && blocks?.length === 0)).toBe(true);
      // 98 ft² of mesh and a tenth more, in sheets of 50.
      expect(shown.job.buyList).toContainEqual({
        key: 'mesh',
        pieces: 3,
        soldAs: 'sheet of 5 by 10 ft',
        mark: 'C',
        source: 'common practice, no source',
      });
    });

    it('are held against what the entry is designed for; advice does not keep it from being entered', async () => {
      const { job } = await create((entry) => {
        entry.design = {
          weather: { airF: 10, dewPointF: 6, windMph: 15, snowInchesPerHour: 0.1, source: 'weather record' },
          freeAreaClass: 'III',
          supply: { volts: 208 },
        };
      });
      const shown = await mine.client.data<{
        job: { findings: { ok: boolean; rule: string; blocks: string[] }[] };
      }>('query($id: ID!) { job(id: $id) { findings { ok rule blocks } } }', { id: job?.id });
      const broken = shown.job.findings.filter(({ ok }) => !ok);
      expect(broken.map(({ rule }) => rule)).toEqual([
        'heat-supplied',
        'heat-supplied',
        'heat-supplied',
        'off-voltage',
      ]);
      expect(broken.flatMap(({ blocks }) => blocks)).toEqual([]);
    });

    it('leave out the equipment against the cold when the weather is warm', async () => {
      const { job } = await create(() => undefined, { coldWeather: false });
      expect(await service.database.equipmentHold.count({ where: { from: { jobId: job?.id ?? '' } } })).toBe(
        0,
      );
    });

    it('are made once for a key, however often it is sent', async () => {
      const before = await service.database.job.count();
      const clientKey = randomUUID();
      const answers = await Promise.all(
        Array.from({ length: 5 }, () => create(() => undefined, { clientKey })),
      );
      expect(new Set(answers.map(({ job }) => job?.id)).size).toBe(1);
      expect(await service.database.job.count()).toBe(before + 1);
    });
  });

  describe('are refused', () => {
    it('when the measurement is not JSON, saying where', async () => {
      const outcome = await create(() => undefined, { measurement: '{ "version": 1,' });
      expect(outcome.faults).toMatchObject([
        { path: 'measurement', message: expect.stringContaining('is not JSON') },
      ]);
    });

    it('with every fault of the measurement, guessing a lost decimal point', async () => {
      const outcome = await create((entry) => {
        entry.areas[1].riserInches = 75;
        entry.areas[2].lengthFeet = -1;
      });
      expect(outcome.__typename).toBe('InvalidInput');
      expect(outcome.faults?.map(({ path }) => path)).toEqual([
        'measurement.areas[1].riserInches',
        'measurement.areas[2].lengthFeet',
      ]);
      expect(outcome.faults?.[0]?.message).toContain('7.5');
    });

    it('when the footing would not reach below frost, with the rule and its caution', async () => {
      const outcome = await create((entry) => {
        entry.footing.bottomInches = 47;
      });
      expect(outcome.faults?.[0]?.message).toMatch(/47.*48/s);
      expect(outcome.faults?.[0]?.path).toBe('measurement.footing.bottomInches');
      expect(outcome.faults?.[0]?.message).toContain('authority decide');
    });

    it('when the frost depth entered is less than the site asks for', async () => {
      const outcome = await create((entry) => {
        entry.frost.depthInches = 30;
        entry.footing.bottomInches = 36;
      });
      expect(outcome.faults?.[0]).toMatchObject({
        path: 'measurement.frost.depthInches',
        message: expect.stringContaining('48 in'),
      });
    });

    it('when the company lacks a kind of equipment that the template needs', async () => {
      await service.database.equipmentPool.updateMany({
        where: { companyId: mine.company.id, kind: 'heater' },
        data: { kind: 'stove' },
      });
      const outcome = await create();
      await service.database.equipmentPool.updateMany({
        where: { companyId: mine.company.id, kind: 'stove' },
        data: { kind: 'heater' },
      });
      expect(outcome.faults).toMatchObject([{ message: expect.stringContaining('"heater"') }]);
    });

    it('at a site without an authority that could inspect', async () => {
      const site = await service.database.site.create({
        data: {
          companyId: mine.company.id,
          address: '1 Bare Hill',
          town: 'Fen Hollow',
          zone: 'America/New_York',
          frostDepthInches: 40,
          frostSource: 'rule',
        },
      });
      const outcome = await create(() => undefined, { siteId: site.id });
      expect(outcome.faults).toMatchObject([
        { path: 'siteId', message: expect.stringContaining('authority') },
      ]);
    });

    it('without leaving a row or a gap in the numbers', async () => {
      const first = await create();
      await create((entry) => {
        entry.footing.bottomInches = 40;
      });
      const second = await create();
      expect(second.job?.number).toBe((first.job?.number ?? 0) + 1);
    });

    it('to anybody but the office', async () => {
      const foreman = await service.signIn(mine.people.foreman.email, TEST_PASSWORD);
      await expect(
        foreman.change('createJob', { siteId: mine.siteId, name: 'x', ownerName: 'x', measurement: '{}' }),
      ).rejects.toThrow('not-allowed');
    });
  });

  describe('changed', () => {
    it('take what is given; a due date goes away by null', async () => {
      const { job } = await create(() => undefined, { dueAt: '2031-03-01T17:00:00Z' });
      const named = await change('updateJob', {
        jobId: job?.id,
        name: 'Larch Street, side door',
        priority: 2,
      });
      expect(named.job).toMatchObject({
        name: 'Larch Street, side door',
        priority: 2,
        dueAt: '2031-03-01T17:00:00.000Z',
        revision: 2,
      });
      const free = await change('updateJob', { jobId: job?.id, dueAt: null });
      expect(free.job).toMatchObject({ dueAt: null, priority: 2, revision: 3 });
    });

    it('refuse a date that is none', async () => {
      const { job } = await create();
      const answer = await mine.client.ask(
        'mutation($input: UpdateJobInput!) { updateJob(input: $input) { __typename } }',
        { input: { clientKey: randomUUID(), jobId: job?.id, dueAt: 'soon' } },
      );
      expect(answer.errors?.[0]?.extensions?.code).toBe('bad-request');
    });

    it('keep a priority between 1 and 9', async () => {
      const { job } = await create();
      const outcome = await change('updateJob', { jobId: job?.id, priority: 10 });
      expect(outcome.faults).toMatchObject([
        { path: 'priority', message: expect.stringContaining('1 (served first)') },
      ]);
    });
  });

  describe('cancelled', () => {
    it('release their commitments and take no more changes', async () => {
      const { job } = await create();
      const phase = await service.database.phase.findFirstOrThrow({
        where: { jobId: job?.id ?? '', kind: 'demo' },
      });
      const commitment = await service.database.commitment.create({
        data: {
          companyId: mine.company.id,
          phaseId: phase.id,
          startAt: new Date('2031-06-02T12:00:00Z'),
          finishAt: new Date('2031-06-03T12:00:00Z'),
          madeAt: new Date('2031-01-06T12:00:00Z'),
        },
      });
      const outcome = await change('cancelJob', { jobId: job?.id, reason: 'the owner sold the house' });
      expect(outcome.job?.state).toBe('cancelled');
      expect(await service.database.commitment.findUnique({ where: { id: commitment.id } })).toMatchObject({
        state: 'released',
      });
      expect(await change('updateJob', { jobId: job?.id, priority: 1 })).toMatchObject({
        __typename: 'WrongState',
        state: 'cancelled',
      });
    });

    it('must say why, and must not have work under way', async () => {
      const { job } = await create();
      expect((await change('cancelJob', { jobId: job?.id, reason: ' ' })).faults).toMatchObject([
        { path: 'reason' },
      ]);
      await service.database.phase.updateMany({
        where: { jobId: job?.id ?? '', kind: 'demo' },
        data: { state: 'started', actualStart: new Date('2031-01-06T13:00:00Z') },
      });
      const outcome = await change('cancelJob', { jobId: job?.id, reason: 'changed plans' });
      expect(outcome).toMatchObject({ __typename: 'WrongState', message: expect.stringContaining('Demo') });
    });
  });

  describe('of another company', () => {
    it('are answered like missing ones', async () => {
      const foreign = await theirs.enterJob('Their entry');
      for (const id of [foreign, MISSING, 'not an id']) {
        const data = await mine.client.data<{ job: null }>('query($id: ID!) { job(id: $id) { id } }', { id });
        expect(data.job).toBeNull();
        for (const name of ['updateJob', 'cancelJob']) {
          const outcome = await change(name, {
            jobId: id,
            ...(name === 'cancelJob' ? { reason: 'not ours' } : {}),
          });
          expect(outcome).toMatchObject({ __typename: 'NotFound', what: 'job' });
        }
      }
      const outcome = await create(() => undefined, { siteId: theirs.siteId });
      expect(outcome).toMatchObject({ __typename: 'NotFound', what: 'site' });
    });

    it('never come in a page, nor by number', async () => {
      const foreign = await theirs.enterJob('Another of theirs');
      const { jobs } = await mine.client.data<{ jobs: { edges: { node: { id: string } }[] } }>(
        '{ jobs(first: 200) { edges { node { id } } } }',
      );
      expect(jobs.edges.map(({ node }) => node.id)).not.toContain(foreign);
      const { number } = await service.database.job.findUniqueOrThrow({ where: { id: foreign } });
      await service.database.job.update({ where: { id: foreign }, data: { number: number + 5000 } });
      const found = await mine.client.data<{ jobByNumber: null }>(
        'query($n: Int!) { jobByNumber(number: $n) { id } }',
        { n: number + 5000 },
      );
      expect(found.jobByNumber).toBeNull();
    });
  });

  it('come in pages by state', async () => {
    const { jobs } = await mine.client.data<{ jobs: { edges: { node: { state: string } }[] } }>(
      '{ jobs(first: 200, state: cancelled) { edges { node { state } } } }',
    );
    expect(jobs.edges.length).toBeGreaterThan(0);
    expect(new Set(jobs.edges.map(({ node }) => node.state))).toEqual(new Set(['cancelled']));
  });
});
