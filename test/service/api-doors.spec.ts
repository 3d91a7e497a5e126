import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import {
  buildSchema,
  getNamedType,
  type GraphQLArgument,
  type GraphQLField,
  type GraphQLInputField,
  type GraphQLOutputType,
  isInputObjectType,
  isInterfaceType,
  isLeafType,
  isObjectType,
  isUnionType,
} from 'graphql';
import { schemaFilePath } from '../../src/platform/graphql/schema-file.js';
import type { Answer, ApiClient } from '../support/api-client.js';
import { makeCompany, TEST_PASSWORD, type TestCompany } from '../support/company.js';
import { makeWholeCompany, type RowsByName } from '../support/whole-company.js';
import { sampleOf } from '../support/sample-input.js';
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
  const variables = Object.fromEntries(field.args.map((arg) => [arg.name, sampleOf(arg, id)]));
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

  beforeAll(async () => {
    service = await startService();
    mine = await makeCompany(service.database, 'Mine');
    foreign = await makeWholeCompany(service, 'Theirs');
    office = await service.signIn(mine.people.office.email, TEST_PASSWORD);
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

  /** Asks every field and keeps those whose answer is not the wanted one: a list of what is wrong, empty when all is well. */
  async function wrongOnes(
    fields: readonly Field[],
    look: (field: Field) => Promise<readonly [got: unknown, wanted: unknown]>,
  ): Promise<unknown[]> {
    const wrong: unknown[] = [];
    for (const field of fields) {
      const [got, wanted] = await look(field);
      if (!isDeepStrictEqual(got, wanted)) wrong.push({ field: field.name, got, wanted });
    }
    return wrong;
  }

  const codeOf = (answer: Answer) => answer.errors?.[0]?.extensions?.code;

  it.each(['Query', 'Mutation'] as const)('open to nobody who has not signed in: every %s', async (root) => {
    const wrong = await wrongOnes(fieldsOf(root), async (field) => [
      codeOf(await ask(service.anonymous(), root, field, () => randomUUID())),
      'not-signed-in',
    ]);
    expect(wrong).toEqual([]);
  });

  it('answer a viewer who tries to change anything with "not allowed"', async () => {
    const viewer = await service.signIn(mine.people.viewer.email, TEST_PASSWORD);
    const wrong = await wrongOnes(fieldsOf('Mutation'), async (field) => [
      codeOf(await ask(viewer, 'Mutation', field, () => randomUUID())),
      'not-allowed',
    ]);
    expect(wrong).toEqual([]);
  });

  it.each(['Query', 'Mutation'] as const)(
    'answer ids of another company like missing ones: every %s that takes one',
    async (root) => {
      const tried = fieldsOf(root).filter((field) => idNames(field).length > 0);
      const wrong = await wrongOnes(tried, async (field) => {
        const toForeign = await ask(office, root, field, foreignIdFor(field));
        const toMissing = await ask(office, root, field, missingIds());
        const code = (toForeign.data as { answer?: { code?: string } } | null)?.answer?.code;
        const found = { toForeign, code: root === 'Mutation' ? code : 'NotFound', errors: toForeign.errors };
        return [found, { toForeign: toMissing, code: 'NotFound', errors: undefined }];
      });
      expect(wrong).toEqual([]);
      expect(tried.length).toBeGreaterThan(root === 'Query' ? 10 : 30);
    },
  );

  it('show a company nothing of another in any list', async () => {
    const known = Object.values(foreign);
    const lists = fieldsOf('Query').filter((one) => idNames(one).length === 0);
    const wrong = await wrongOnes(lists, async (field) => {
      const answer = JSON.stringify(await ask(office, 'Query', field, () => randomUUID()));
      return [known.filter((id) => answer.includes(id)), []];
    });
    expect(wrong).toEqual([]);
  });

  it('answer ids that are no ids at all like missing ones', async () => {
    const tried = fieldsOf('Query').filter((one) => idNames(one).length > 0);
    const wrong = await wrongOnes(tried, async (field) => [
      await ask(office, 'Query', field, () => 'not-an-id'),
      await ask(office, 'Query', field, missingIds()),
    ]);
    expect(wrong).toEqual([]);
  });
});

/** Ids that nobody has: the same one for the same name. */
function missingIds(): (name: string) => string {
  const ids = new Map<string, string>();
  return (name) => {
    const id = ids.get(name) ?? randomUUID();
    ids.set(name, id);
    return id;
  };
}
