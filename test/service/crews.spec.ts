import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { makeCompany, TEST_PASSWORD, type TestCompany } from '../support/company.js';
import { startService, type TestService } from '../support/service.js';

const WEEK = [
  {
    day: 'mon',
    hours: [
      { from: '07:00', to: '12:00' },
      { from: '12:30', to: '15:30' },
    ],
  },
  { day: 'tue', hours: [{ from: '07:00', to: '15:30' }] },
];
const MASONS = { name: 'Masons', trades: ['mason'], size: 3, zone: 'America/New_York', week: WEEK };
const CREW =
  '... on CrewChanged { crew { id name trades size active revision week { day hours { from to } } exceptions { day reason hours { from to } } members { name } } }';
const POOL = '... on EquipmentChanged { pool { id quantity revision } }';
const REFUSALS =
  '... on InvalidInput { faults { path message } } ... on StaleRevision { currentRevision } ... on NotFound { what }';

interface Outcome {
  __typename: string;
  message?: string;
  crew?: {
    id: string;
    name: string;
    size: number;
    active: boolean;
    revision: number;
    week: { day: string; hours: { from: string; to: string }[] }[];
    exceptions: { day: string; reason: string; hours: object[] }[];
    members: { name: string }[];
  };
  pool?: { id: string; quantity: number; revision: number };
  faults?: { path: string; message: string }[];
  currentRevision?: number;
  what?: string;
}

describe('crews and equipment', () => {
  let service: TestService;
  let mine: TestCompany;
  let theirs: TestCompany;
  let office: ApiClient;

  beforeAll(async () => {
    service = await startService();
    mine = await makeCompany(service.database);
    theirs = await makeCompany(service.database, 'Tamarack Stone');
    office = await service.signIn(mine.people.office.email, TEST_PASSWORD);
  });
  afterAll(() => service.stop());

  const change = (name: string, input: object) =>
    office.change<Outcome>(
      name,
      input as Record<string, unknown>,
      `${name === 'setEquipment' ? POOL : CREW} ${REFUSALS}`,
    );

  it('adds a crew with its hours and people, and shows all seven days', async () => {
    const { crew } = await change('createCrew', { ...MASONS, memberIds: [mine.people.crew.id] });
    expect(crew).toMatchObject({ name: 'Masons', size: 3, active: true, revision: 1, exceptions: [] });
    expect(crew?.members).toEqual([{ name: mine.people.crew.name }]);
    expect(crew?.week.map(({ day }) => day)).toEqual(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']);
    expect(crew?.week[0]?.hours).toEqual(WEEK[0]?.hours);
    expect(crew?.week[6]?.hours).toEqual([]);
  });

  it('refuses a name that is taken, saying so', async () => {
    const outcome = await change('createCrew', MASONS);
    expect(outcome.__typename).toBe('InvalidInput');
    expect(outcome.faults?.[0]).toMatchObject({ path: 'name' });
    expect(outcome.faults?.[0]?.message).toContain('choose another name');
  });

  it('names every fault of the input at once', async () => {
    const outcome = await change('createCrew', {
      name: ' ',
      trades: ['juggler'],
      size: 0,
      zone: 'Mars/Olympus',
      week: [
        { day: 'mon', hours: [{ from: '12:00', to: '08:00' }] },
        { day: 'tue', hours: [{ from: '25:00', to: '26:00' }] },
      ],
    });
    expect(outcome.__typename).toBe('InvalidInput');
    const paths = outcome.faults?.map(({ path }) => path) ?? [];
    expect(paths).toEqual(
      expect.arrayContaining(['name', 'trades.0', 'size', 'zone', 'week.0.hours.0', 'week.1.hours.0.from']),
    );
  });

  it.each([
    [
      'overlapping hours',
      [
        {
          day: 'mon',
          hours: [
            { from: '07:00', to: '12:00' },
            { from: '11:00', to: '15:00' },
          ],
        },
      ],
      'week.0.hours',
    ],
    ['a weekday given twice', [WEEK[1], WEEK[1]], 'week'],
    ['an unknown weekday', [{ day: 'monday', hours: [] }], 'week.0.day'],
  ])('refuses %s', async (_what, week, path) => {
    const outcome = await change('createCrew', { ...MASONS, name: 'Odd hours', week });
    expect(outcome.faults?.map((fault) => fault.path)).toEqual([path]);
  });

  it('changes what is given and leaves the rest', async () => {
    const made = await change('createCrew', { ...MASONS, name: 'Second masons' });
    const { crew } = await change('updateCrew', { crewId: made.crew?.id, size: 5, active: false });
    expect(crew).toMatchObject({ name: 'Second masons', size: 5, active: false, revision: 2 });
    expect(crew?.week[0]?.hours).toEqual(WEEK[0]?.hours);
  });

  it('refuses a change against an older revision and keeps the row', async () => {
    const made = await change('createCrew', { ...MASONS, name: 'Contested' });
    const id = made.crew?.id;
    await change('updateCrew', { crewId: id, revision: 1, size: 4 });
    const late = await change('updateCrew', { crewId: id, revision: 1, size: 9 });
    expect(late).toMatchObject({ __typename: 'StaleRevision', currentRevision: 2 });
    expect(await service.database.crew.findUnique({ where: { id: id! } })).toMatchObject({
      size: 4,
      revision: 2,
    });
  });

  it('sets, replaces and clears the hours of one day', async () => {
    const made = await change('createCrew', { ...MASONS, name: 'Holiday makers' });
    const crewId = made.crew?.id;
    await change('setCrewException', { crewId, day: '2031-01-20', hours: [], reason: 'holiday' });
    const { crew } = await change('setCrewException', {
      crewId,
      day: '2031-01-20',
      hours: [{ from: '08:00', to: '12:00' }],
      reason: 'half a day after all',
    });
    expect(crew?.exceptions).toEqual([
      { day: '2031-01-20', reason: 'half a day after all', hours: [{ from: '08:00', to: '12:00' }] },
    ]);
    const cleared = await change('clearCrewException', { crewId, day: '2031-01-20' });
    expect(cleared.crew?.exceptions).toEqual([]);
    expect(await change('clearCrewException', { crewId, day: '2031-01-20' })).toMatchObject({
      __typename: 'NotFound',
    });
  });

  it('refuses a day that is no date', async () => {
    const made = await change('createCrew', { ...MASONS, name: 'Calendar less' });
    const outcome = await change('setCrewException', {
      crewId: made.crew?.id,
      day: '2031-02-30',
      hours: [],
      reason: 'x',
    });
    expect(outcome.faults?.map(({ path }) => path)).toEqual(['day']);
  });

  it('adds a kind of equipment once and then changes its quantity', async () => {
    const first = await change('setEquipment', {
      kind: 'blanket',
      name: 'Insulated blanket',
      unit: 'pieces',
      quantity: 12,
    });
    const second = await change('setEquipment', {
      kind: 'blanket',
      name: 'Insulated blanket',
      unit: 'pieces',
      quantity: 20,
    });
    expect(second.pool).toEqual({ id: first.pool?.id, quantity: 20, revision: 2 });
    const { equipmentPools } = await office.data<{ equipmentPools: object[] }>(
      '{ equipmentPools { kind quantity } }',
    );
    expect(equipmentPools).toEqual([{ kind: 'blanket', quantity: 20 }]);
  });

  it('writes each change to the journal with who made it', async () => {
    const made = await change('createCrew', { ...MASONS, name: 'Well noted' });
    const lines = await service.database.journalEntry.findMany({ where: { subjectId: made.crew?.id ?? '' } });
    expect(lines).toMatchObject([
      { action: 'crew added', personId: mine.people.office.id, companyId: mine.company.id },
    ]);
  });

  it('answers the crew of another company, a missing one and a malformed id alike', async () => {
    const foreign = await service.database.crew.create({
      data: {
        companyId: theirs.company.id,
        name: 'Strangers',
        trades: ['mason'],
        size: 2,
        zone: 'America/New_York',
        week: {},
      },
    });
    const ids = [foreign.id, '019b0000-0000-7000-8000-000000000000', 'no id at all'];
    for (const id of ids) {
      const { crew } = await office.data<{ crew: null }>('query($id: ID!) { crew(id: $id) { id } }', { id });
      expect(crew).toBeNull();
      expect(await change('updateCrew', { crewId: id, size: 9 })).toMatchObject({
        __typename: 'NotFound',
        what: 'crew',
      });
    }
    expect(await service.database.crew.findUnique({ where: { id: foreign.id } })).toMatchObject({
      size: 2,
      revision: 1,
    });
  });

  it('refuses a member who belongs to another company, and adds no crew', async () => {
    const outcome = await change('createCrew', {
      ...MASONS,
      name: 'Mixed',
      memberIds: [theirs.people.crew.id],
    });
    expect(outcome).toMatchObject({ __typename: 'NotFound', what: 'person' });
    expect(await service.database.crew.count({ where: { name: 'Mixed' } })).toBe(0);
  });

  it('lets nobody but the office change crews', async () => {
    const foreman = await service.signIn(mine.people.foreman.email, TEST_PASSWORD);
    await expect(foreman.change('createCrew', { ...MASONS, name: 'By foreman' })).rejects.toThrow(
      'not-allowed',
    );
  });
});
