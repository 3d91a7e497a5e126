import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { HEATED_ENTRY } from '../../shared/entry/template/default/heated-entry.js';
import { entryFixture, type Loose } from '../../shared/entry/testing/entry-fixture.js';
import { makeOffice, type Office } from '../support/office.js';
import { startService, type TestService } from '../support/service.js';

interface Shown {
  id: string;
  name: string;
  active: boolean;
  revision: number;
  body: string;
}
interface Outcome {
  __typename: string;
  template?: Shown;
  job?: { id: string; template: { id: string; name: string } };
  what?: string;
  faults?: { path: string; message: string }[];
}

const FIELDS = 'id name active revision body';
const REFUSALS = '... on InvalidInput { faults { path message } } ... on NotFound { what }';
const SAVED = `... on TemplateSaved { template { ${FIELDS} } } ${REFUSALS}`;

describe('templates', () => {
  let service: TestService;
  let mine: Office;
  let theirs: Office;

  beforeAll(async () => {
    service = await startService();
    mine = await makeOffice(service);
    theirs = await makeOffice(service, 'Tamarack Stone');
  });
  afterAll(() => service.stop());

  const list = async () =>
    (await mine.client.data<{ templates: Shown[] }>(`{ templates { ${FIELDS} } }`)).templates;
  const save = (input: object) =>
    mine.client.change<Outcome>('saveTemplate', input as Record<string, unknown>, SAVED);
  const edited = (change: (body: Loose) => void): string => {
    const body = JSON.parse(JSON.stringify(HEATED_ENTRY));
    change(body);
    return JSON.stringify(body);
  };
  const createJob = (more: object) =>
    mine.client.change<Outcome>(
      'createJob',
      {
        siteId: mine.siteId,
        name: 'Larch Street',
        ownerName: 'R. Alder',
        measurement: JSON.stringify(entryFixture()),
        ...more,
      },
      `... on JobChanged { job { id template { id name } } } ${REFUSALS}`,
    );

  it('offer the built-in one to a company without any, and save it with the first job', async () => {
    const [offered] = await list();
    expect(offered).toMatchObject({ id: 'built-in', name: HEATED_ENTRY.name, active: true, revision: 0 });
    expect(JSON.parse(offered?.body ?? '')).toEqual(JSON.parse(JSON.stringify(HEATED_ENTRY)));
    expect(await service.database.template.count({ where: { companyId: mine.company.id } })).toBe(0);
    const { job } = await createJob({ templateId: 'built-in' });
    const [saved, ...others] = await list();
    expect(others).toEqual([]);
    expect(saved).toMatchObject({ id: job?.template.id, name: HEATED_ENTRY.name, revision: 1 });
  });

  it('are saved under the name given, and used by the jobs made from them', async () => {
    const body = edited((template) => {
      template.phases.find((phase: Loose) => phase.kind === 'dig').duration.crewSize = 1;
      template.phases.find((phase: Loose) => phase.kind === 'dig').name = 'Dig by hand';
    });
    const { template } = await save({ name: 'By hand', body });
    expect(template).toMatchObject({ name: 'By hand', active: true, revision: 1 });
    expect((JSON.parse(template?.body ?? '') as { name: string }).name).toBe('By hand');
    const byHand = await createJob({ templateId: template?.id });
    const byMachine = await createJob({});
    const dig = async (outcome: Outcome) =>
      service.database.phase.findFirstOrThrow({ where: { jobId: outcome.job?.id ?? '', kind: 'dig' } });
    const [slow, quick] = [await dig(byHand), await dig(byMachine)];
    expect(slow.name).toBe('Dig by hand');
    // One pair of hands instead of three; set-up of half an hour stays.
    expect(slow.durationMinutes - 30).toBeGreaterThanOrEqual((quick.durationMinutes - 30) * 3 - 45);
  });

  it('list every fault of a body with its place, and are not saved', async () => {
    const body = edited((template) => {
      template.links[0].to = 'no-such-phase';
      template.holdPoints.find((point: Loose) => point.kind === 'inspection').waivable = true;
      template.phases[0].duration.crewSize = -2;
    });
    const outcome = await save({ name: 'Faulty', body });
    expect(outcome.__typename).toBe('InvalidInput');
    expect(outcome.faults?.length).toBeGreaterThanOrEqual(2);
    expect(
      outcome.faults?.every(({ path, message }) => path.startsWith('body.') && message.length > 10),
    ).toBe(true);
    expect((await list()).map(({ name }) => name)).not.toContain('Faulty');
  });

  it.each([
    ['text that is not JSON', '{', 'is not JSON'],
    ['JSON that is no template', '[1, 2]', ''],
  ])('refuse %s', async (_what, body, hint) => {
    const outcome = await save({ name: 'Odd', body });
    expect(outcome.faults?.[0]?.path).toMatch(/^body/);
    expect(outcome.faults?.[0]?.message).toContain(hint);
  });

  it('are replaced only against the revision that was read', async () => {
    const made = await save({ name: 'Contested', body: edited(() => undefined) });
    const id = made.template?.id;
    const again = await save({
      templateId: id,
      revision: 1,
      name: 'Contested',
      body: edited(() => undefined),
    });
    expect(again.template).toMatchObject({ id, revision: 2 });
    const late = await save({
      templateId: id,
      revision: 1,
      name: 'Contested',
      body: edited(() => undefined),
    });
    expect(late.__typename).toBe('StaleRevision');
  });

  it('keep names apart', async () => {
    await save({ name: 'Plain entry', body: edited(() => undefined) });
    const outcome = await save({ name: 'Plain entry', body: edited(() => undefined) });
    expect(outcome.faults).toMatchObject([
      { path: 'name', message: expect.stringContaining('another name') },
    ]);
  });

  it('out of use make no new jobs', async () => {
    const { template } = await save({ name: 'Retired', body: edited(() => undefined), active: false });
    const outcome = await createJob({ templateId: template?.id });
    expect(outcome.faults).toMatchObject([
      { path: 'templateId', message: expect.stringContaining('out of use') },
    ]);
  });

  it('of another company are answered like missing ones', async () => {
    await theirs.enterJob();
    const foreign = await service.database.template.findFirstOrThrow({
      where: { companyId: theirs.company.id },
    });
    for (const id of [foreign.id, '019b0000-0000-7000-8000-000000000000', 'x']) {
      const data = await mine.client.data<{ template: null }>(
        'query($id: ID!) { template(id: $id) { id } }',
        { id },
      );
      expect(data.template).toBeNull();
      expect(await save({ templateId: id, name: 'Stolen', body: edited(() => undefined) })).toMatchObject({
        __typename: 'NotFound',
        what: 'template',
      });
      expect(await createJob({ templateId: id })).toMatchObject({ __typename: 'NotFound', what: 'template' });
    }
    expect(await service.database.template.findUnique({ where: { id: foreign.id } })).toEqual(foreign);
  });
});
