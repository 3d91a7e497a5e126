import { type CanActivate, type ExecutionContext, Injectable } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { GqlExecutionContext, type GqlContextType } from '@nestjs/graphql';
import type { GraphQLResolveInfo } from 'graphql';
import type { Role } from '../../generated/prisma/client.js';
import type { LinkScope } from '../context.js';
import { CodedError } from './coded-error.js';
import { ALLOWED_ROLES, PUBLIC, type RequestContext } from './request-context.js';

/**
 * The second lock on what a signed link reaches, should a document ever come past the first.
 *
 * @throws CodedError when the link does not reach the field.
 */
function demandField(gql: GqlExecutionContext, { reach }: LinkScope): void {
  const { parentType, fieldName } = gql.getInfo<GraphQLResolveInfo>();
  const field = `${parentType.name}.${fieldName}`;
  if (!reach.has(field)) throw new CodedError('not-allowed', `This link does not reach ${field}.`);
}

/** Stands before every query, mutation and subscription: signed in, and of an allowed role. */
@Injectable()
export class SignedInGuard implements CanActivate {
  constructor(private readonly reflector: Reflector) {}

  canActivate(host: ExecutionContext): boolean {
    if (host.getType<GqlContextType>() !== 'graphql') return true;
    const targets = [host.getHandler(), host.getClass()];
    const gql = GqlExecutionContext.create(host);
    const { ctx, closed } = gql.getContext<RequestContext>();
    if (closed) throw closed;
    if (ctx?.link) demandField(gql, ctx.link);
    else if (this.reflector.getAllAndOverride<boolean>(PUBLIC, targets)) return true;
    if (!ctx) throw new CodedError('not-signed-in', 'Sign in first.');
    const roles = this.reflector.getAllAndOverride<Role[] | undefined>(ALLOWED_ROLES, targets);
    if (roles && !roles.includes(ctx.role)) {
      throw new CodedError(
        'not-allowed',
        `This needs the role ${roles.join(' or ')}; you are signed in as ${ctx.role}.`,
      );
    }
    return true;
  }
}
