import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { type ApiClient } from '../support/api-client.js';
import { type BareJob, makeBareJob } from '../support/bare-job.js';
import { makeCompany, TEST_PASSWORD, type TestCompany } from '../support/company.js';
import { startService, type TestService } from '../support/service.js';

const NOTICES = `query($jobId: ID, $first: Int!, $after: String) {
  notices(jobId: $jobId, first: $first, after: $after) {
    edges { node {
      id kind createdAt title subjectType subjectId job { id number }
      deliveries { id channel state attempts sentAt error recipient { id name } }
    } }
    pageInfo { hasNextPage endCursor }
  }
}`;

const REMINDERS = `query($jobId: ID, $state: ReminderState) {
  reminders(jobId: $jobId, state: $state) {
    edges { node { id kind dueAt usefulUntil state title subjectType subjectId job { number } } }
  }
}`;

let service: TestService;
let house: TestCompany;
let office: ApiClient;
let bare: BareJob;
let other: BareJob;

interface Page<T> {
  readonly edges: readonly { readonly node: T }[];
  readonly pageInfo: { readonly hasNextPage: boolean; readonly endCursor: string | null };
}
const nodes = <T>(page: Page<T>): T[] => page.edges.map(({ node }) => node);

const message = (subject: string) => ({
  subject,
  opening: '',
  facts: [],
  lists: [],
  cautions: [],
  link: { words: '', path: '/' },
});

async function addNotice(job: BareJob, title: string): Promise<void> {
  const { companyId } = job.job;
  const notice = await service.database.notice.create({
    data: {
      companyId,
      jobId: job.job.id,
      kind: 'hookup-ready',
      sourceKey: randomUUID(),
      subjectType: 'hookup',
      subjectId: job.hookup.id,
      detail: { message: message(title), usefulUntil: null },
      createdAt: new Date('2031-01-06T14:00:00Z'),
    },
  });
  await service.database.delivery.create({
    data: {
      companyId,
      noticeId: notice.id,
      recipientId: house.people.electrician.id,
      channel: 'email',
      state: 'failed',
      attempts: 12,
      claimedAt: new Date('2031-01-06T14:00:00Z'),
      error: 'the server refuses',
    },
  });
}

beforeAll(async () => {
  service = await startService();
  house = await makeCompany(service.database);
  bare = await makeBareJob(service.database, house.company.id);
  other = await makeBareJob(service.database, house.company.id);
  office = await service.signIn(house.people.office.email, TEST_PASSWORD);
  await addNotice(bare, 'first');
  await addNotice(other, 'second');
  await service.database.reminder.create({
    data: {
      companyId: house.company.id,
      jobId: bare.job.id,
      kind: 'visit-today',
      subjectType: 'inspection',
      subjectId: randomUUID(),
      dueAt: new Date('2031-01-08T11:00:00Z'),
      usefulUntil: new Date('2031-01-08T17:00:00Z'),
      state: 'tooLate',
      detail: { crewId: null, message: message('Inspector comes today') },
    },
  });
});

afterAll(() => service.stop());

describe('notices', () => {
  const ask = async (variables: Record<string, unknown> = {}) =>
    (await office.data<{ notices: Page<Record<string, unknown>> }>(NOTICES, { first: 50, ...variables }))
      .notices;

  test('are listed in the order they were written, with what became of each copy', async () => {
    const listed = nodes(await ask());
    expect(listed.map(({ title }) => title)).toEqual(['first', 'second']);
    expect(listed[0]).toMatchObject({
      kind: 'hookup-ready',
      createdAt: '2031-01-06T14:00:00.000Z',
      subjectType: 'hookup',
      subjectId: bare.hookup.id,
      job: { id: bare.job.id, number: bare.job.number },
      deliveries: [
        {
          channel: 'email',
          state: 'failed',
          attempts: 12,
          sentAt: null,
          error: 'the server refuses',
          recipient: { id: house.people.electrician.id },
        },
      ],
    });
  });

  test('are narrowed to one job and paged', async () => {
    expect(nodes(await ask({ jobId: other.job.id })).map(({ title }) => title)).toEqual(['second']);
    const page = await ask({ first: 1 });
    expect(page.pageInfo.hasNextPage).toBe(true);
    const next = await ask({ first: 1, after: page.pageInfo.endCursor });
    expect(nodes(next).map(({ title }) => title)).toEqual(['second']);
    expect(next.pageInfo.hasNextPage).toBe(false);
  });

  test('of a malformed, unknown or foreign job are none', async () => {
    const foreign = await makeCompany(service.database);
    const theirs = await makeBareJob(service.database, foreign.company.id);
    await addNotice(theirs, 'theirs');
    for (const jobId of ['nonsense', randomUUID(), theirs.job.id])
      expect(nodes(await ask({ jobId }))).toEqual([]);
    expect(nodes(await ask())).toHaveLength(2);
  });

  test('and reminders need a session', async () => {
    for (const query of [NOTICES, REMINDERS]) {
      const answer = await service.anonymous().ask(query, { first: 50 });
      expect(answer.errors?.[0]?.extensions?.code).toBe('not-signed-in');
    }
  });
});

describe('reminders', () => {
  const ask = async (variables: Record<string, unknown> = {}) =>
    nodes((await office.data<{ reminders: Page<Record<string, unknown>> }>(REMINDERS, variables)).reminders);

  test('are listed with title and job, the missed ones too', async () => {
    expect(await ask()).toMatchObject([
      {
        kind: 'visit-today',
        state: 'tooLate',
        title: 'Inspector comes today',
        dueAt: '2031-01-08T11:00:00.000Z',
        usefulUntil: '2031-01-08T17:00:00.000Z',
        job: { number: bare.job.number },
      },
    ]);
  });

  test('are narrowed by job and state', async () => {
    expect(await ask({ state: 'tooLate', jobId: bare.job.id })).toHaveLength(1);
    expect(await ask({ state: 'pending' })).toEqual([]);
    expect(await ask({ jobId: other.job.id })).toEqual([]);
    expect(await ask({ jobId: 'nonsense' })).toEqual([]);
  });
});
