import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import {
  buildSchema,
  getNamedType,
  type GraphQLArgument,
  type GraphQLField,
  type GraphQLNamedType,
  isInterfaceType,
  isLeafType,
  isObjectType,
  isUnionType,
} from 'graphql';
import WebSocket from 'ws';
import {
  BookHookupDocument,
  HookupPageDocument,
  HookupSheetDocument,
  OwnerWeekDocument,
  RecordHookupDocument,
} from '../../board/api/documents.js';
import { COMMON_PRACTICE } from '../../shared/entry/source.js';
import type { LinkPurpose, Prisma } from '../../src/generated/prisma/client.js';
import { schemaFilePath } from '../../src/platform/graphql/schema-file.js';
import { PURPOSES } from '../../src/signed-links/purposes.js';
import { electricalJob, type ElectricalJob } from '../support/electrical-job.js';
import { LinkBrowser } from '../support/link-browser.js';
import { sampleOf } from '../support/sample-input.js';
import { startService, type TestService } from '../support/service.js';

/*
 * What the holder of a link reaches: the sheet of one job, two changes of it, and nothing else of the whole API, found in
 * the schema rather than listed.
 */

const NOW = '2031-01-06T14:00:00Z';
const schema = buildSchema(readFileSync(schemaFilePath(), 'utf8'));
/** A finding as the design leaves it with the job. Source: the trade's facts, the cable is never cut. */
const CUT_CABLE = {
  rule: 'uncut-cable',
  ok: false,
  measured: '2 pieces',
  limit: '1 piece',
  blocks: ['hookup'],
  source: COMMON_PRACTICE,
  caution: 'The cable is never cut.',
  text: 'Set 1 is cut into 2 pieces; the cable is never cut',
};
/** A hookup as the sheet shows it. */
interface SheetHookup {
  readonly id: string;
  readonly needs: readonly { readonly met: boolean }[];
  readonly cautions: readonly string[];
  readonly heatingSet: { readonly readings: readonly { readonly warnings: readonly string[] }[] };
}
type Field = GraphQLField<unknown, unknown>;

const fieldsOf = (type: GraphQLNamedType | undefined): Field[] =>
  isObjectType(type) || isInterfaceType(type) ? Object.values(type.getFields()) : [];

/** A literal for every argument that must be there, so that a document is refused for its field and nothing else. */
const argumentsOf = (field: Field): string => {
  const demanded = field.args.filter((arg) => String(arg.type).endsWith('!'));
  if (demanded.length === 0) return '';
  return `(${demanded.map((arg) => `${arg.name}: $${arg.name}`).join(', ')})`;
};
const declared = (field: Field): string => {
  const demanded = field.args.filter((arg) => String(arg.type).endsWith('!'));
  return demanded.length > 0
    ? `(${demanded.map((arg) => `$${arg.name}: ${String(arg.type)}`).join(', ')})`
    : '';
};
const leaf = (field: Field): string => (isLeafType(getNamedType(field.type)) ? '' : '{ __typename }');

/** Every type that a link comes to, with the document around a selection on it. */
function ways(
  reach: ReadonlySet<string>,
): Map<string, { field: Field; root: string; around: (inner: string) => string }> {
  const found = new Map<string, { field: Field; root: string; around: (inner: string) => string }>();
  const visit = (type: GraphQLNamedType, root: string, field: Field, around: (inner: string) => string) => {
    if (found.has(type.name) || isLeafType(type)) return;
    found.set(type.name, { field, root, around });
    if (isUnionType(type)) {
      for (const member of type.getTypes()) {
        visit(member, root, field, (inner) => around(`... on ${member.name} { ${inner} }`));
        for (const face of member.getInterfaces())
          visit(face, root, field, (inner) => around(`... on ${face.name} { ${inner} }`));
      }
      return;
    }
    for (const one of fieldsOf(type))
      if (reach.has(`${type.name}.${one.name}`))
        visit(getNamedType(one.type), root, field, (inner) => around(`${one.name} { ${inner} }`));
  };
  for (const [root, type] of [
    ['query', schema.getQueryType()],
    ['mutation', schema.getMutationType()],
  ] as const)
    for (const field of fieldsOf(type ?? undefined))
      if (reach.has(`${type?.name}.${field.name}`))
        visit(
          getNamedType(field.type),
          root,
          field,
          (inner) => `${root}${declared(field)} { ${field.name}${argumentsOf(field)} { ${inner} } }`,
        );
  return found;
}

describe('the holder of a link', () => {
  let service: TestService;
  let entry: ElectricalJob;
  let electrician: LinkBrowser;

  beforeAll(async () => {
    service = await startService({ now: NOW });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    entry = await electricalJob(service);
    electrician = await holder('hookup');
  });
  afterAll(() => service.stop());

  const holder = async (purpose: LinkPurpose, of = entry): Promise<LinkBrowser> => {
    const made = await of.job.office.change<Record<string, unknown>>(
      'makeSignedLink',
      { jobId: of.job.job.id, purpose, recipient: 'Dana Quill' },
      '... on SignedLinkMade { address }',
    );
    const browser = new LinkBrowser(service.url);
    await browser.press(String(made['address']));
    return browser;
  };
  describe.each(['hookup', 'ownerWeek'] as const)('of the purpose %s', (purpose) => {
    const { reach } = PURPOSES[purpose];

    it('names in its reach only fields that there are', () => {
      const real = new Set(
        Object.values(schema.getTypeMap()).flatMap((type) =>
          fieldsOf(type).map(({ name }) => `${type.name}.${name}`),
        ),
      );
      expect([...reach].filter((field) => !real.has(field))).toEqual([]);
    });

    it('is refused every query, change and subscription that is not listed', async () => {
      const browser = await holder(purpose);
      const roots = ['Query', 'Mutation', 'Subscription'] as const;
      const asked = roots.flatMap((root) => fieldsOf(schema.getType(root)).map((field) => ({ root, field })));
      expect(asked.length).toBeGreaterThan(100);
      const wrong: unknown[] = [];
      const open: string[] = [];
      for (const { root, field } of asked) {
        const document = `${root.toLowerCase()}${declared(field)} { ${field.name}${argumentsOf(field)} ${leaf(field)} }`;
        const name = `${root}.${field.name}`;
        if (reach.has(name)) {
          open.push(name);
          continue;
        }
        const variables = Object.fromEntries(
          field.args.map((arg) => [arg.name, sampleOf(arg, () => randomUUID())]),
        );
        const { data, errors } = await browser.ask(document, variables);
        if (data !== null || errors?.[0]?.extensions?.code !== 'not-allowed')
          wrong.push({ name, data, errors });
        await service.database.linkSession.updateMany({ data: { minuteAsks: 1 } });
      }
      expect(wrong).toEqual([]);
      expect(open).toEqual(
        purpose === 'hookup'
          ? ['Query.hookupSheet', 'Mutation.bookHookup', 'Mutation.recordHookup']
          : ['Query.ownerWeek'],
      );
    });

    it('is refused every field that is not listed, of every type that it comes to', async () => {
      const browser = await holder(purpose);
      const wrong: unknown[] = [];
      let tried = 0;
      for (const [name, { around, root, field: way }] of ways(reach)) {
        for (const field of fieldsOf(schema.getType(name))) {
          if (reach.has(`${name}.${field.name}`) || field.args.some((arg) => String(arg.type).endsWith('!')))
            continue;
          tried += 1;
          const document = around(`${field.name} ${leaf(field)}`);
          const { data, errors } = await browser.ask(
            document,
            root === 'mutation'
              ? { input: sampleOf(way.args[0] as GraphQLArgument, () => randomUUID()) }
              : {},
          );
          if (data !== null || errors?.[0]?.extensions?.code !== 'not-allowed')
            wrong.push({ document, data, errors });
          await service.database.linkSession.updateMany({ data: { minuteAsks: 1 } });
        }
      }
      expect(wrong).toEqual([]);
      expect(tried).toBeGreaterThan(purpose === 'hookup' ? 20 : 0);
    });

    it('is refused by way of a fragment, an alias and a second operation as well, and the schema itself', async () => {
      const browser = await holder(purpose);
      const root = purpose === 'hookup' ? 'hookupSheet' : 'ownerWeek';
      for (const query of [
        '{ __schema { types { name } } }',
        '{ __type(name: "Job") { name } }',
        `{ ${root} { __typename } people { name } }`,
        `{ ${root} { __typename } other: company { name } }`,
        `query { ...all } fragment all on Query { ${root} { __typename } jobs { edges { cursor } } }`,
        '{ me { id } }',
        '{ demoPeople { id } }',
        'mutation { signOut }',
      ]) {
        const { data, errors } = await browser.ask(query);
        expect({ query, data, code: errors?.[0]?.extensions?.code }).toEqual({
          query,
          data: null,
          code: 'not-allowed',
        });
      }
    });
  });

  it('is answered the very documents of its page', async () => {
    const answer = await electrician.ask(String(HookupSheetDocument));
    expect(answer.errors).toBeUndefined();
    const owner = await (await holder('ownerWeek')).ask(String(OwnerWeekDocument));
    expect(owner.errors).toBeUndefined();
    const signedIn = await entry.job.office.ask(String(HookupPageDocument), { id: entry.hookup.id });
    expect(signedIn.errors).toBeUndefined();
    const answers = [
      await electrician.ask(String(BookHookupDocument), {
        input: { clientKey: randomUUID(), hookupId: entry.hookup.id, day: NOW },
      }),
      await electrician.ask(String(RecordHookupDocument), {
        input: {
          clientKey: randomUUID(),
          hookupId: entry.hookup.id,
          breakerAmperes: 20,
          disconnect: true,
          groundFault: true,
        },
      }),
    ];
    for (const { data, errors } of answers)
      expect({ data, errors }).toMatchObject({ data: { outcome: { code: 'NeedsMissing' } } });
  });

  it('cannot listen to changes', async () => {
    const socket = new WebSocket(`${service.url.replace('http', 'ws')}/graphql`, 'graphql-transport-ws', {
      headers: { cookie: electrician.cookieHeader, 'flagway-link': electrician.linkId },
    });
    const closed = new Promise<number>((resolve) => socket.once('close', resolve));
    socket.once('open', () => socket.send(JSON.stringify({ type: 'connection_init' })));
    // graphql-transport-ws: 4403 is "Forbidden".
    expect(await closed).toBe(4403);
  });

  const SHEET = `{ hookupSheet { head { jobName town zone now } hookups {
    id state sensorThrough coldLeadThrough bookedFor bookedBy doneBy cautions needs { id met text }
    circuit { watts volts amperes breakerAmperes text source }
    heatingSet { name ohms areas { name } readings { stage ohms megaohms accepted warnings findings { rule ok limit } } } } } }`;
  const sheet = async () => {
    const { data, errors } = await electrician.ask<{ hookupSheet: { hookups: SheetHookup[] } }>(SHEET);
    expect(errors).toBeUndefined();
    const [hookup] = data?.hookupSheet.hookups ?? [];
    if (!hookup) throw new Error('The sheet shows no hookup');
    return hookup;
  };
  const CHANGED = '... on HookupChanged { hookup { id state bookedFor bookedBy doneBy } }';
  const book = (more: object = {}) =>
    electrician.change(
      'bookHookup',
      { hookupId: entry.hookup.id, day: '2031-01-08T13:00:00Z', ...more },
      CHANGED,
    );
  const record = (more: object = {}) =>
    electrician.change(
      'recordHookup',
      { hookupId: entry.hookup.id, breakerAmperes: 20, disconnect: true, groundFault: true, ...more },
      `${CHANGED} ... on NeedsMissing { needs { id met } } ... on LimitExceeded { findings { rule ok } } ... on DesignBroken { findings { rule ok } }`,
    );

  it('reads what is ready and what is not, the circuit with its numbers, and the readings with their trend', async () => {
    const before = await sheet();
    expect(before).toMatchObject({ state: 'waiting', sensorThrough: false, coldLeadThrough: false });
    expect(before.needs.some(({ met }) => !met)).toBe(true);
    await entry.makeReady();
    service.setClock('2031-01-06T15:00:00Z');
    await entry.read('beforeHookup', { megaohms: 40 });
    const ready = await sheet();
    expect(ready).toMatchObject({
      state: 'ready',
      sensorThrough: true,
      // 3,000 W at 240 V draw 12.5 A; 125 % of it is 15.6 A, the next standard breaker 20 A (NEC 426.4, 240.6).
      circuit: { watts: 3000, volts: 240, amperes: 12.5, breakerAmperes: 20 },
      heatingSet: { name: 'Set 1', ohms: 19.2, areas: [{ name: 'landing' }] },
    });
    expect(ready.heatingSet.readings).toHaveLength(2);
    // Practice of insulation tests: a fall by a decade is looked into though the reading passes.
    expect(ready.heatingSet.readings[1]?.warnings[0]).toMatch(/fell from 500 to 40 MΩ/);
    expect(ready.cautions.join(' ')).toMatch(/licensed electrician under permit.*Codes differ by place/s);
  });

  it('books by the rules of a signed-in electrician, under the name of the link', async () => {
    expect(await book()).toMatchObject({ code: 'NeedsMissing' });
    await entry.makeReady();
    expect(await book({ day: '2031-01-04T13:00:00Z' })).toMatchObject({ code: 'InvalidInput' });
    expect(await book({ clientKey: 'again' })).toMatchObject({ code: 'InvalidInput' });
    expect(await book()).toMatchObject({
      hookup: { state: 'booked', bookedFor: '2031-01-08T13:00:00.000Z', bookedBy: 'Dana Quill' },
    });
    expect(await sheet()).toMatchObject({ state: 'booked', bookedBy: 'Dana Quill' });
    expect(await book({ day: '2031-01-09T13:00:00Z', revision: 1 })).toMatchObject({
      code: 'StaleRevision',
    });
    const [line] = await service.database.journalEntry.findMany({
      where: { jobId: entry.job.job.id, action: 'hookup booked' },
    });
    expect(line).toMatchObject({ personId: null, detail: { byLink: 'Dana Quill' } });
    const { journal } = await entry.job.office.data<{ journal: { edges: { node: object }[] } }>(
      'query($id: ID!) { journal(first: 1, jobId: $id) { edges { node { action byLink person { id } } } } }',
      { id: entry.job.job.id },
    );
    expect(journal.edges[0]?.node).toEqual({ action: 'hookup booked', byLink: 'Dana Quill', person: null });
  });

  it('has one effect however often a change is sent', async () => {
    await entry.makeReady();
    const clientKey = randomUUID();
    const answers = [];
    for (let times = 0; times < 3; times += 1) answers.push(await book({ clientKey }));
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(
      await service.database.journalEntry.count({
        where: { jobId: entry.job.job.id, action: 'hookup booked' },
      }),
    ).toBe(1);
    expect(await book({ clientKey, day: '2031-01-10T13:00:00Z' })).toMatchObject({ code: 'KeyReused' });
    // Another link has keys of its own.
    electrician = await holder('hookup');
    expect(await book({ clientKey, day: '2031-01-10T13:00:00Z' })).toMatchObject({
      hookup: { bookedFor: '2031-01-10T13:00:00.000Z' },
    });
  });

  it('records by the same rules: needs, readings, gates, breaker, protection', async () => {
    expect(await record()).toMatchObject({ code: 'NeedsMissing' });
    await entry.makeReady();
    const unread = await record();
    expect(unread.code).toBe('ReadingMissing');
    expect(unread.message).toContain('take it and record it');
    await entry.read('beforeHookup', { megaohms: 2 });
    const failed = await record();
    expect(failed.code).toBe('NeedsMissing');
    expect(failed.message).toMatch(/reading/i);
    service.setClock('2031-01-06T15:00:00Z');
    await entry.read('beforeHookup');
    await service.database.job.update({
      where: { id: entry.job.job.id },
      data: { designFindings: [CUT_CABLE] as unknown as Prisma.InputJsonArray },
    });
    const broken = await record();
    expect(broken).toMatchObject({ code: 'DesignBroken', findings: [{ rule: 'uncut-cable', ok: false }] });
    expect(broken.message).toContain('never cut');
    await service.database.job.update({ where: { id: entry.job.job.id }, data: { designFindings: [] } });
    const small = await record({ breakerAmperes: 15, groundFault: false });
    expect(small.code).toBe('LimitExceeded');
    expect(small['findings']).toEqual([
      { rule: 'breaker', ok: false },
      { rule: 'disconnect', ok: true },
      { rule: 'ground-fault', ok: false },
    ]);
    expect(await record({ at: '2031-01-07T14:00:00Z' })).toMatchObject({ code: 'InvalidInput' });
    expect(await record({ note: 'panel B, slot 12' })).toMatchObject({
      hookup: { state: 'done', doneBy: 'Dana Quill' },
    });
    expect(await record()).toMatchObject({ code: 'WrongState' });
    expect(await book()).toMatchObject({ code: 'WrongState' });
  });

  it('finds no hookup of another job, of its own company or of another', async () => {
    await entry.makeReady();
    const { database } = service;
    const second = await database.job.create({
      data: {
        companyId: entry.job.company.id,
        number: 102,
        name: 'Second',
        siteId: entry.job.site.id,
        templateId: entry.job.job.templateId,
        ownerName: 'S. Second',
        measurement: {},
        quantities: [],
      },
    });
    const set = await database.heatingSet.create({
      data: {
        companyId: second.companyId,
        jobId: second.id,
        key: 'set-1',
        name: 'Set 1',
        watts: 3000,
        volts: 240,
        ohms: 19.2,
        heatedFeet: 240,
        coldLeadFeet: 20,
      },
    });
    const beside = await database.hookup.create({
      data: {
        companyId: second.companyId,
        jobId: second.id,
        heatingSetId: set.id,
        phaseId: entry.phases.hookup.id,
      },
    });
    const foreign = await electricalJob(service);
    await foreign.makeReady();
    for (const hookupId of [beside.id, foreign.hookup.id, randomUUID(), 'no-id']) {
      expect(await book({ hookupId })).toMatchObject({ code: 'NotFound' });
      expect(await record({ hookupId })).toMatchObject({ code: 'NotFound' });
    }
    const { data } = await electrician.ask<{ hookupSheet: { hookups: { id: string }[] } }>(
      '{ hookupSheet { hookups { id } } }',
    );
    expect(data?.hookupSheet.hookups).toEqual([{ id: entry.hookup.id }]);
  });

  it('is not the office: neither page is opened by a session, nor by the link of the other purpose', async () => {
    for (const client of [entry.job.office, entry.job.electrician])
      for (const query of ['{ hookupSheet { head { jobName } } }', '{ ownerWeek { summary } }'])
        expect((await client.ask(query)).errors?.[0]?.extensions?.code).toBe('not-allowed');
  });
});
