import { randomUUID } from 'node:crypto';
import {
  getNamedType,
  type GraphQLArgument,
  type GraphQLInputField,
  type GraphQLInputType,
  isEnumType,
  isInputObjectType,
  isListType,
  isNonNullType,
} from 'graphql';

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
  remark: 'as agreed',
  watts: 2000,
  volts: 240,
  ohms: 28.8,
  heatedFeet: 200,
  material: 'concrete',
  placedTempF: 60,
  stage: 'laid',
  key: 'a',
  values: [],
  first: 10,
};

/** A value for an argument or a field of an input that passes the checks of shape; `id` gives the ids by their names. */
export function sampleOf(
  place: GraphQLArgument | GraphQLInputField,
  id: (name: string) => string,
  type: GraphQLInputType = place.type,
): unknown {
  if (isNonNullType(type)) return sampleOf(place, id, type.ofType);
  if (place.name === 'clientKey') return randomUUID();
  const named = getNamedType(type);
  if (named.name === 'ID') return isListType(type) ? [id(place.name)] : id(place.name);
  if (isEnumType(named)) return named.getValues()[0]?.name;
  const sensible = SENSIBLE[place.name];
  if (named.name === 'DateTime') return String(sensible).includes('T') ? sensible : '2031-01-06T13:00:00Z';
  if (place.name in SENSIBLE) return sensible;
  if (isListType(type)) return [];
  if (isInputObjectType(type))
    return Object.fromEntries(
      Object.values(type.getFields()).map((field) => [field.name, sampleOf(field, id)]),
    );
  if (!isNonNullType(place.type)) return null;
  return { String: 'text', Int: 1, Float: 1, Boolean: true }[named.name];
}
