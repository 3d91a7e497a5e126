import { readFileSync } from 'node:fs';
import { describe, expect, it } from '@jest/globals';
import { buildSchema, isEnumType, isInputObjectType, isInterfaceType, isObjectType } from 'graphql';
import { schemaFilePath } from '../../src/platform/graphql/schema-file.js';

const schema = buildSchema(readFileSync(schemaFilePath(), 'utf8'));
const types = Object.values(schema.getTypeMap()).filter(({ name }) => !name.startsWith('__'));

/** Every place of the schema that a reader of the API sees, with its description. */
const places: [string, string | null | undefined][] = types.flatMap((type) => {
  const own: [string, string | null | undefined][] = [[type.name, type.description]];
  if (isEnumType(type))
    return [
      ...own,
      ...type
        .getValues()
        .map((value): [string, typeof value.description] => [
          `${type.name}.${value.name}`,
          value.description,
        ]),
    ];
  if (!isObjectType(type) && !isInterfaceType(type) && !isInputObjectType(type)) return own;
  return [
    ...own,
    ...Object.values(type.getFields()).map((field): [string, typeof field.description] => [
      `${type.name}.${field.name}`,
      field.description,
    ]),
  ];
});

describe('the committed schema', () => {
  it('describes every type, field and enum member', () => {
    const scalars = new Set(['String', 'Int', 'Float', 'Boolean', 'ID', 'Query', 'Mutation', 'Subscription']);
    expect(
      places
        .filter(([name, description]) => !scalars.has(name) && !description?.trim())
        .map(([name]) => name),
    ).toEqual([]);
  });

  it('gives every mutation but those of the session a client key and a typed outcome', () => {
    const session = new Set(['signIn', 'signInToDemo', 'signOut']);
    for (const field of Object.values(schema.getMutationType()?.getFields() ?? {})) {
      if (session.has(field.name)) continue;
      const input = field.args.find(({ name }) => name === 'input');
      const inputType = schema.getType(String(input?.type).replace('!', ''));
      expect([
        field.name,
        isInputObjectType(inputType) && String(inputType.getFields()['clientKey']?.type),
      ]).toEqual([field.name, 'ID!']);
      expect([field.name, String(field.type)]).toEqual([
        field.name,
        `${field.name[0]?.toUpperCase()}${field.name.slice(1)}Outcome!`,
      ]);
    }
  });
});
