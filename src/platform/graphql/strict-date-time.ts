import { GraphQLISODateTime } from '@nestjs/graphql';
import { Kind } from 'graphql';
import { CodedError } from './coded-error.js';

const INSTANT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?(Z|[+-]\d{2}:\d{2})$/;

/** The instant a text names. @throws CodedError when it names none: no date, or one without its offset. */
export function instantOf(value: unknown): Date {
  const instant = typeof value === 'string' && INSTANT.test(value) ? new Date(value) : null;
  if (instant && !Number.isNaN(instant.getTime())) return instant;
  throw new CodedError(
    'bad-request',
    `${JSON.stringify(value)} is not an instant; write date, time and offset, such as 2031-01-06T14:00:00Z.`,
  );
}

// The framework's scalar makes an invalid date of any text, which would fail only in the database, as a fault of ours.
GraphQLISODateTime.parseValue = instantOf;
GraphQLISODateTime.parseLiteral = (node) => instantOf(node.kind === Kind.STRING ? node.value : null);
