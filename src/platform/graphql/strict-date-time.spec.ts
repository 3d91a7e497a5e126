import { describe, expect, it } from '@jest/globals';
import { GraphQLISODateTime } from '@nestjs/graphql';
import { Kind } from 'graphql';
import { instantOf } from './strict-date-time.js';

// The format is that of RFC 3339, section 5.6, which asks for an offset.
describe('an instant from a caller', () => {
  it.each([
    ['2031-01-06T14:00:00Z', '2031-01-06T14:00:00.000Z'],
    ['2031-01-06T14:00Z', '2031-01-06T14:00:00.000Z'],
    ['2031-01-06T09:00:00.250-05:00', '2031-01-06T14:00:00.250Z'],
  ])('is read from %s', (text, iso) => {
    expect(instantOf(text).toISOString()).toBe(iso);
  });

  it.each([
    'soon',
    '',
    '2031-01-06',
    '2031-01-06T14:00:00',
    '2031-13-06T14:00:00Z',
    '2031-01-06T25:00:00Z',
    17,
    null,
  ])('is refused from %j, saying how to write one', (value) => {
    expect(() => instantOf(value)).toThrow('such as 2031-01-06T14:00:00Z');
  });

  it('is checked by the scalar itself, in variables and in documents', () => {
    expect(() => GraphQLISODateTime.parseValue('soon')).toThrow('not an instant');
    expect(() => GraphQLISODateTime.parseLiteral({ kind: Kind.STRING, value: 'soon' }, {})).toThrow(
      'not an instant',
    );
    expect(() => GraphQLISODateTime.parseLiteral({ kind: Kind.INT, value: '17' }, {})).toThrow(
      'not an instant',
    );
  });
});
