import { type DocumentNode, type GraphQLSchema, TypeInfo, visit, visitWithTypeInfo } from 'graphql';
import { CodedError } from './coded-error.js';
import type { RequestContext } from './request-context.js';

/**
 * Stands before every document: one that comes by a signed link may name the fields of its reach and no others, however
 * deep they lie. What is not listed is refused, so that a new field is out of reach until somebody decides otherwise.
 *
 * @throws CodedError naming the first field that is out of reach, or why the link opens nothing.
 */
export function demandReach(schema: GraphQLSchema, document: DocumentNode, request: RequestContext): void {
  if (request.closed) throw request.closed;
  const reach = request.ctx?.link?.reach;
  if (!reach) return;
  const types = new TypeInfo(schema);
  visit(
    document,
    visitWithTypeInfo(types, {
      Field: ({ name }) => {
        if (name.value === '__typename') return;
        const field = `${types.getParentType()?.name ?? 'unknown'}.${name.value}`;
        if (!reach.has(field)) throw new CodedError('not-allowed', `This link does not reach ${field}.`);
      },
    }),
  );
}
