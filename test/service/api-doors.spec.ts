import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import {
  buildSchema,
  getNamedType,
  type GraphQLArgument,
  type GraphQLField,
  type GraphQLInputField,
  type GraphQLInputType,
  type GraphQLOutputType,
  isEnumType,
  isInputObjectType,
  isInterfaceType,
  isLeafType,
  isListType,
  isNonNullType,
  isObjectType,
  isUnionType,
} from 'graphql';
import { schemaFilePath } from '../../src/platform/graphql/schema-file.js';
import { ApiClient } from '../support/api-client.js';
import { makeCompany, TEST_PASSWORD, type TestCompany } from '../support/company.js';
import { makeWholeCompany, type RowsByName } from '../support/whole-company.js';
import { startService, type TestService } from '../support/service.js';

/*
 * Every door of the API, found in the schema rather than listed: nobody passes without signing in, and the ids of
 * another company are answered exactly like ids that do not exist.
 */

const schema = buildSchema(readFileSync(schemaFilePath(), 'utf8'));
const OPEN = new Set(['me', 'demoPeople', 'signIn', 'signInToDemo', 'signOut']);
type Field = GraphQLField<unknown, unknown>;
const fieldsOf = (root: 'Query' | 'Mutation'): Field[] => {
  const type = schema.getType(root);
  return isObjectType(type) ? Object.values(type.getFields()).filter(({ name }) => !OPEN.has(name)) : [];
};

/** Values that pass the checks of shape, by the name of a field; ids come from elsewhere. */
const SENSIBLE: Record<string, unknown> = {
  from: '2031-01-06T00:00:00Z',
  to: '2031-01-20T00:00:00Z',
  startAt: '2031-01-08T14:00:00Z',
  finishAt: '2031-01-08T16:00:00Z',
  startsAt: '2031-01-06T14:00:00Z',
  endsAt: '2031-01-07T14:00:00Z',
  visitFrom: '2031-01-08T15:00:00Z',
  visitTo: '2031-01-08T15:30:00Z',
  day: '2031-01-08',
  zone: 'America/New_York',
  email: 'someone@example.test',
  name: 'A name',
  reason: 'because it was agreed on site',
  body: '{}',
  limits: '[]',
  measurement: '{}',
  format: 'csv',
  text: 'issued_at,2031-01-06T00:00Z\nat,temperature_f\n2031-01-06T01:00Z,40',
  hatch: 'stone',
  trade: 'mason',
  trades: ['mason'],
  kind: 'extra',
  after: null,
  before: null,
  note: 'as agreed',
  stage: 'laid',
  key: 'a',
  values: [],
  first: 10,
};

function sample(
  place: GraphQLArgument | GraphQLInputField,
  id: (name: string) => string,
  type: GraphQLInputType = place.type,
): unknown {
  if (isNonNullType(type)) return sample(place, id, type.ofType);
  if (place.name === 'clientKey') return randomUUID();
  const named = getNamedType(type);
  if (named.name === 'ID') return isListType(type) ? [id(place.name)] : id(place.name);
  if (isEnumType(named)) return named.getValues()[0]?.name;
  if (place.name in SENSIBLE) return SENSIBLE[place.name];
  if (isListType(type)) return [];
  if (isInputObjectType(type))
    return Object.fromEntries(
      Object.values(type.getFields()).map((field) => [field.name, sample(field, id)]),
    );
  if (!isNonNullType(place.type)) return null;
  return { String: 'text', Int: 1, Float: 1, Boolean: true, DateTime: '2031-01-06T13:00:00Z' }[named.name];
}

/** Ids that a field asks for, in its arguments and inside its input. */
function idNames(field: Field): string[] {
  const inside = (place: GraphQLArgument | GraphQLInputField): string[] => {
    const named = getNamedType(place.type);
    if (isInputObjectType(named)) return Object.values(named.getFields()).flatMap(inside);
    return named.name === 'ID' && place.name !== 'clientKey' ? [place.name] : [];
  };
  return field.args.flatMap(inside);
}

/** Reads whatever comes back two levels deep, so that a leak would show. */
function selection(type: GraphQLOutputType, depth = 2): string {
  const named = getNamedType(type);
  if (isLeafType(named)) return '';
  if (isUnionType(named)) return '{ __typename ... on Refusal { code message } }';
  if (!isObjectType(named) && !isInterfaceType(named)) return '';
  const fields = Object.values(named.getFields()).filter(
    ({ args, type: inner }) => args.length === 0 && (isLeafType(getNamedType(inner)) || depth > 0),
  );
  const parts = fields.map((field) => {
    const inner = selection(field.type, depth - 1);
    return isLeafType(getNamedType(field.type)) || inner ? `${field.name} ${inner}` : '';
  });
  return parts.some((part) => part.trim()) ? `{ __typename ${parts.join(' ')} }` : '';
}

async function ask(
  client: ApiClient,
  root: 'Query' | 'Mutation',
  field: Field,
  id: (name: string) => string,
) {
  const variables = Object.fromEntries(field.args.map((arg) => [arg.name, sample(arg, id)]));
  const declared = field.args.map((arg) => `$${arg.name}: ${String(arg.type)}`).join(', ');
  const passed = field.args.map((arg) => `${arg.name}: $${arg.name}`).join(', ');
  const call = `${field.name}${passed ? `(${passed})` : ''} ${selection(field.type, 1)}`;
  return client.ask(
    `${root === 'Query' ? 'query' : 'mutation'}${declared ? `(${declared})` : ''} { answer: ${call} }`,
    variables,
  );
}

describe('the doors of the API', () => {
  let service: TestService;
  let mine: TestCompany;
  let foreign: RowsByName;
  let office: ApiClient;
  let electrician: ApiClient;

  beforeAll(async () => {
    service = await startService();
    mine = await makeCompany(service.database, 'Mine');
    foreign = await makeWholeCompany(service, 'Theirs');
    office = await service.signIn(mine.people.office.email, TEST_PASSWORD);
    electrician = await service.signIn(mine.people.electrician.email, TEST_PASSWORD);
  }, 120_000);
  afterAll(() => service.stop());

  /** A single row is asked for by "id": which kind it is follows from the name of the query. */
  const foreignIdFor =
    (field: Field) =>
    (name: string): string => {
      const id = foreign[name === 'id' ? `${field.name}Id` : name];
      if (!id)
        throw new Error(
          `The schema asks for an id "${name}" of which the test knows no row; add it to whole-company.ts`,
        );
      return id;
    };

  it.each(['Query', 'Mutation'] as const)('open to nobody who has not signed in: every %s', async (root) => {
    for (const field of fieldsOf(root)) {
      const answer = await ask(service.anonymous(), root, field, () => randomUUID());
      expect([field.name, answer.errors?.[0]?.extensions?.code]).toEqual([field.name, 'not-signed-in']);
    }
  });

  it('answer a viewer who tries to change anything with "not allowed"', async () => {
    const viewer = await service.signIn(mine.people.viewer.email, TEST_PASSWORD);
    for (const field of fieldsOf('Mutation')) {
      const answer = await ask(viewer, 'Mutation', field, () => randomUUID());
      expect([field.name, answer.errors?.[0]?.extensions?.code]).toEqual([field.name, 'not-allowed']);
    }
  });

  it.each(['Query', 'Mutation'] as const)(
    'answer ids of another company like missing ones: every %s that takes one',
    async (root) => {
      const tried = fieldsOf(root).filter((field) => idNames(field).length > 0);
      for (const field of tried) {
        const missingIds = new Map<string, string>();
        const missing = (name: string) =>
          missingIds.get(name) ?? missingIds.set(name, randomUUID()).get(name) ?? '';
        const client = field.description?.includes('electrician') ? electrician : office;
        const toForeign = await ask(client, root, field, foreignIdFor(field));
        const toMissing = await ask(client, root, field, missing);
        expect([field.name, toForeign]).toEqual([field.name, toMissing]);
        const answer = (toForeign.data as { answer?: { code?: string } } | null)?.answer;
        if (root === 'Mutation') expect([field.name, answer?.code]).toEqual([field.name, 'NotFound']);
        expect(JSON.stringify(toForeign)).not.toContain('Theirs');
      }
      expect(tried.length).toBeGreaterThan(root === 'Query' ? 10 : 30);
    },
  );

  it('show a company nothing of another in any list', async () => {
    const known = new Set(Object.values(foreign));
    for (const field of fieldsOf('Query').filter((one) => idNames(one).length === 0)) {
      const answer = JSON.stringify(await ask(office, 'Query', field, () => randomUUID()));
      expect([field.name, [...known].filter((id) => answer.includes(id))]).toEqual([field.name, []]);
    }
  });

  it('answer ids that are no ids at all like missing ones', async () => {
    for (const field of fieldsOf('Query').filter((one) => idNames(one).length > 0)) {
      const odd = await ask(office, 'Query', field, () => 'not-an-id');
      const missing = await ask(office, 'Query', field, () => randomUUID());
      expect([field.name, odd]).toEqual([field.name, missing]);
    }
  });
});
