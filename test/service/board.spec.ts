import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { TEST_PASSWORD } from '../support/company.js';
import { makeOffice, type Office } from '../support/office.js';
import { startService, type TestService } from '../support/service.js';
import { statementsOf } from '../support/statements.js';

/** Everything a board screen asks for, several types deep. */
const FULL = `query($from: DateTime!, $to: DateTime!, $jobIds: [ID!], $crewIds: [ID!]) {
  board(from: $from, to: $to, jobIds: $jobIds, crewIds: $crewIds) {
    from to planNumber changeNumber now
    jobs { id number name state site { id address authority { name } } areas { id name } clearances { id state } plannedFinish committedFinish }
    phases {
      id key state job { id number } area { name } requiredCrew { name } actualCrew { name }
      planned { startAt finishAt crew { name } reason { kind text } } commitment { startAt finishAt crew { name } }
      holdPoints { id state title inspection { id } clearance { id } }
      linksIn { id kind from { id name } } linksOut { id to { id name } }
    }
    crews { id name week { day hours { from to } } exceptions { day } members { name } }
    inspections { id state phase { id } job { id } authority { name } plannedVisit { startAt } }
    conflicts { kind text phase { id } job { id } }
    openProposal { id number }
  }
}`;
const YEAR = { from: '2031-01-01T00:00:00Z', to: '2031-12-31T00:00:00Z' };

interface Row {
  id: string;
}
interface Board {
  planNumber: number;
  changeNumber: string;
  now: string;
  jobs: (Row & { number: number })[];
  phases: (Row & {
    key: string;
    job: Row;
    planned: { startAt: string; finishAt: string; crew: { name: string } | null } | null;
  })[];
  crews: (Row & { name: string })[];
  inspections: (Row & { job: Row })[];
}

describe('the board', () => {
  let service: TestService;
  let mine: Office;
  let theirs: Office;
  let first: string;

  beforeAll(async () => {
    service = await startService();
    mine = await makeOffice(service);
    theirs = await makeOffice(service, 'Tamarack Stone');
    first = await mine.enterJob('Larch Street');
  });
  afterAll(() => service.stop());

  const board = async (variables: object): Promise<Board> =>
    (await mine.client.data<{ board: Board }>(FULL, variables as Record<string, unknown>)).board;

  it('shows the jobs with their planned phases, crews and visits, and the present', async () => {
    const shown = await board(YEAR);
    expect(shown.now).toBe('2031-01-06T14:00:00.000Z');
    expect(shown.planNumber).toBeGreaterThan(0);
    expect(shown.jobs.map(({ id }) => id)).toEqual([first]);
    expect(shown.phases.length).toBe(await service.database.phase.count({ where: { jobId: first } }));
    expect(shown.crews.map(({ name }) => name)).toEqual([...shown.crews.map(({ name }) => name)].sort());
    expect(shown.inspections.length).toBeGreaterThan(0);
  });

  it('asks the database as often for six jobs as for one', async () => {
    // Reasons and conflicts are of several kinds, and six jobs show kinds that one does not: those lines stay out here.
    const plain = FULL.replace('reason { kind text }', '').replace(/conflicts {.*}\n/, '');
    const ask = (document: string) => statementsOf(() => mine.client.data(document, YEAR));
    const one = { plain: await ask(plain), full: await ask(FULL) };
    for (let number = 2; number <= 6; number += 1) await mine.enterJob(`Larch Street ${number}`);
    const six = { plain: await ask(plain), full: await ask(FULL) };
    const shown = await board(YEAR);
    expect(shown.jobs).toHaveLength(6);
    expect(shown.phases.length).toBeGreaterThan(150);
    // A batch may be cut in two by timing; what grows with the jobs would grow by more than one.
    expect(six.plain.length).toBeLessThanOrEqual(one.plain.length + 1);
    // One more query for each kind of thing that reasons name, never one for each job or phase.
    expect(six.full.length - one.full.length).toBeLessThanOrEqual(10);
  });

  it('shows only phases whose time touches the stretch', async () => {
    const all = await board({ ...YEAR, jobIds: [first] });
    const dig = all.phases.find(({ key }) => key === 'dig');
    const { startAt, finishAt } = dig?.planned ?? { startAt: '', finishAt: '' };
    const during = await board({ from: startAt, to: finishAt, jobIds: [first] });
    expect(during.phases.map(({ key }) => key)).toContain('dig');
    for (const { planned } of during.phases) {
      expect(Date.parse(planned?.startAt ?? '')).toBeLessThan(Date.parse(finishAt));
      expect(Date.parse(planned?.finishAt ?? '')).toBeGreaterThanOrEqual(Date.parse(startAt));
    }
    const before = await board({ from: '2030-11-01T00:00:00Z', to: '2030-12-01T00:00:00Z', jobIds: [first] });
    expect(before.phases).toEqual([]);
    expect(before.jobs.map(({ id }) => id)).toEqual([first]);
    const afterwards = await board({ from: finishAt, to: '2032-01-01T00:00:00Z', jobIds: [first] });
    expect(afterwards.phases.map(({ key }) => key)).not.toContain('dig');
  });

  it('shows a phase by its commitment, and by what really happened, where the plan has moved it away', async () => {
    const demo = await service.database.phase.findFirstOrThrow({ where: { jobId: first, key: 'demo' } });
    const summer = { from: '2031-08-01T00:00:00Z', to: '2031-08-05T00:00:00Z', jobIds: [first] };
    expect((await board(summer)).phases).toEqual([]);
    const commitment = await service.database.commitment.create({
      data: {
        companyId: mine.company.id,
        phaseId: demo.id,
        startAt: new Date('2031-08-02T12:00:00Z'),
        finishAt: new Date('2031-08-02T20:00:00Z'),
        madeAt: new Date('2031-01-06T12:00:00Z'),
      },
    });
    expect((await board(summer)).phases.map(({ id }) => id)).toEqual([demo.id]);
    await service.database.commitment.update({ where: { id: commitment.id }, data: { state: 'released' } });
    expect((await board(summer)).phases).toEqual([]);
    await service.database.phase.update({
      where: { id: demo.id },
      data: { state: 'started', actualStart: new Date('2031-07-30T12:00:00Z') },
    });
    expect((await board(summer)).phases.map(({ id }) => id)).toEqual([demo.id]);
    await service.database.phase.update({
      where: { id: demo.id },
      data: { state: 'done', actualFinish: new Date('2031-07-31T12:00:00Z') },
    });
    expect((await board(summer)).phases).toEqual([]);
    await service.database.phase.update({
      where: { id: demo.id },
      data: { state: 'waiting', actualStart: null, actualFinish: null },
    });
  });

  it('narrows to the crews asked for', async () => {
    const all = await board(YEAR);
    const crew = all.crews.find(({ name }) => name === 'Cable hands');
    const narrowed = await board({ ...YEAR, crewIds: [crew?.id] });
    expect(narrowed.crews.map(({ name }) => name)).toEqual(['Cable hands']);
    expect(narrowed.phases.length).toBeGreaterThan(0);
    expect(new Set(narrowed.phases.map(({ planned }) => planned?.crew?.name))).toEqual(
      new Set(['Cable hands']),
    );
  });

  it('leaves out a cancelled job unless it is asked for', async () => {
    const jobId = await mine.enterJob('Given up');
    await mine.client.change('cancelJob', { jobId, reason: 'the owner sold the house' });
    expect((await board(YEAR)).jobs.map(({ id }) => id)).not.toContain(jobId);
    expect((await board({ ...YEAR, jobIds: [jobId] })).jobs.map(({ id }) => id)).toEqual([jobId]);
  });

  it.each([
    ['longer than 400 days', '2031-01-01T00:00:00Z', '2032-02-06T00:00:00Z', '400 days'],
    ['that ends before it begins', '2031-02-01T00:00:00Z', '2031-01-01T00:00:00Z', 'after from'],
    ['that is empty', '2031-02-01T00:00:00Z', '2031-02-01T00:00:00Z', 'after from'],
    ['that is no time at all', 'someday', '2031-01-01T00:00:00Z', ''],
  ])('refuses a stretch %s', async (_what, from, to, hint) => {
    const answer = await mine.client.ask(FULL, { from, to });
    expect(answer.errors?.[0]?.extensions?.code).toBe('bad-request');
    expect(answer.errors?.[0]?.message).toContain(hint);
  });

  it('takes a stretch of exactly 400 days', async () => {
    const shown = await board({ from: '2031-01-01T00:00:00Z', to: '2032-02-05T00:00:00Z' });
    expect(shown.jobs.length).toBeGreaterThan(0);
  });

  it('shows nothing of another company, even when its ids are asked for', async () => {
    const foreign = await theirs.enterJob('Their entry');
    const crew = await service.database.crew.findFirstOrThrow({ where: { companyId: theirs.company.id } });
    for (const ids of [
      { jobIds: [foreign] },
      { crewIds: [crew.id] },
      { jobIds: ['nothing'], crewIds: ['nothing'] },
    ]) {
      const shown = await board({ ...YEAR, ...ids });
      expect(shown.phases).toEqual([]);
      if ('jobIds' in ids) expect(shown.jobs).toEqual([]);
      if ('crewIds' in ids) expect(shown.crews).toEqual([]);
    }
    const all = await board(YEAR);
    expect(all.jobs.map(({ id }) => id)).not.toContain(foreign);
  });

  it('gives the number of the newest change shown, from which the changes go on', async () => {
    const { changeNumber } = await board(YEAR);
    await mine.client.change('updateJob', { jobId: first, priority: 3 });
    const { changesSince } = await mine.client.data<{ changesSince: { action: string; job: Row }[] }>(
      'query($n: String!) { changesSince(changeNumber: $n) { action job { id } } }',
      { n: changeNumber },
    );
    expect(changesSince).toEqual([{ action: 'job changed', job: { id: first } }]);
    expect(Number((await board(YEAR)).changeNumber)).toBeGreaterThan(Number(changeNumber));
  });

  it('may be read by everybody of the company', async () => {
    const viewer = await service.signIn(mine.people.viewer.email, TEST_PASSWORD);
    const { board: shown } = await viewer.data<{ board: Board }>(FULL, YEAR);
    expect(shown.jobs.length).toBeGreaterThan(0);
    const answer = await service.anonymous().ask(FULL, YEAR);
    expect(answer.errors?.[0]?.extensions?.code).toBe('not-signed-in');
  });
});
