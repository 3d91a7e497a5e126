import { costLimitRule } from '@escape.tech/graphql-armor-cost-limit';
import { maxAliasesRule } from '@escape.tech/graphql-armor-max-aliases';
import { maxDepthRule } from '@escape.tech/graphql-armor-max-depth';
import type { ValidationRule } from 'graphql';

/** Largest request body in bytes. */
export const BODY_LIMIT = 256 * 1024;

/** Bounds on a document, checked before it runs. Introspection is not counted against depth. */
export const documentLimits: readonly ValidationRule[] = [
  maxDepthRule({ n: 9, ignoreIntrospection: true }),
  maxAliasesRule({ n: 20 }),
  costLimitRule({
    maxCost: 20_000,
    objectCost: 2,
    scalarCost: 1,
    depthCostFactor: 1.5,
    ignoreIntrospection: true,
  }),
];
