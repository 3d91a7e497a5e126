import { createParamDecorator, type ExecutionContext, SetMetadata } from '@nestjs/common';
import { GqlExecutionContext } from '@nestjs/graphql';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Role } from '../../generated/prisma/client.js';
import type { Context } from '../context.js';
import type { CodedError } from './coded-error.js';

/** What mercurius hands to every resolver. `ctx` is null while nobody is signed in. */
export interface RequestContext {
  readonly request: FastifyRequest | null;
  readonly reply: FastifyReply | null;
  readonly ctx: Context | null;
  /** Why a signed link that was named opens nothing; then nothing is answered, open fields neither. */
  readonly closed?: CodedError | null;
}

/** Parameter decorator: the service context of the signed-in person. */
export const Ctx = createParamDecorator((_: unknown, host: ExecutionContext): Context => {
  const { ctx } = GqlExecutionContext.create(host).getContext<RequestContext>();
  if (!ctx)
    throw new Error(
      'Ctx was asked for where nobody is signed in; mark the resolver @Public and take RequestCtx',
    );
  return ctx;
});

/** Parameter decorator: the whole request context; for signing in and out. */
export const RequestCtx = createParamDecorator((_: unknown, host: ExecutionContext): RequestContext =>
  GqlExecutionContext.create(host).getContext<RequestContext>(),
);

export const PUBLIC = 'flagway:public';
export const ALLOWED_ROLES = 'flagway:roles';

/** The field may be asked for without signing in. */
export const Public = () => SetMetadata(PUBLIC, true);

/** Only these roles may use the field; without it every signed-in person may. */
export const Allow = (...roles: Role[]) => SetMetadata(ALLOWED_ROLES, roles);
