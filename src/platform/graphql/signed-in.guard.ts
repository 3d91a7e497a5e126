import { type CanActivate, type ExecutionContext, Injectable } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { GqlExecutionContext, type GqlContextType } from '@nestjs/graphql';
import type { Role } from '../../generated/prisma/client.js';
import { CodedError } from './coded-error.js';
import { ALLOWED_ROLES, PUBLIC, type RequestContext } from './request-context.js';

/** Stands before every query, mutation and subscription: signed in, and of an allowed role. */
@Injectable()
export class SignedInGuard implements CanActivate {
  constructor(private readonly reflector: Reflector) {}

  canActivate(host: ExecutionContext): boolean {
    if (host.getType<GqlContextType>() !== 'graphql') return true;
    const targets = [host.getHandler(), host.getClass()];
    if (this.reflector.getAllAndOverride<boolean>(PUBLIC, targets)) return true;
    const { ctx } = GqlExecutionContext.create(host).getContext<RequestContext>();
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
