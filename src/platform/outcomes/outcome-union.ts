import type { Type } from '@nestjs/common';
import { createUnionType } from '@nestjs/graphql';
import { InvalidInput } from './invalid-input.js';
import { KeyReused } from './key-reused.js';
import { NotFound } from './not-found.js';
import { Refusal } from './refusal.js';
import { StaleRevision } from './stale-revision.js';

/** Refusals that every change may answer with. */
const COMMON: readonly Type<Refusal>[] = [NotFound, StaleRevision, InvalidInput, KeyReused];

/**
 * The GraphQL result of a mutation: what was done, or one of the refusals it can end with.
 *
 * @param done the success type; services return plain `{ done: 'TypeName', ... }`-free objects of that class.
 * @param refusals the mutation's own refusals; the common four are added.
 */
export function outcomeUnion(name: string, done: Type<object>, refusals: readonly Type<Refusal>[] = []) {
  const types = [done, ...new Set([...refusals, ...COMMON])] as const;
  const byName = new Map<string, Type<object>>(types.map((type) => [type.name, type]));
  return createUnionType({
    name,
    description: `${done.name}, or why not.`,
    types: () => types as readonly Type<object>[] as [Type<object>],
    resolveType: (value: object & { code?: string }) =>
      value.code ? (byName.get(value.code) ?? null) : done,
  });
}
