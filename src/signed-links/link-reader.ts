import { Injectable } from '@nestjs/common';
import type { LinkSession, SignedLink } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database, type Transaction } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { isRowId } from '../platform/row-id.js';
import type { LinkRow } from './link-standing.js';
import { hashToken, isToken } from './opaque-token.js';

/** Reads signed links and where they are open; what the office asks for is batched within the request. */
@Injectable()
export class LinkReader {
  constructor(private readonly database: Database) {}

  /** The link of a token, whoever has it; null when nobody made one. */
  byToken(token: string): Promise<LinkRow | null> {
    return isToken(token) ? linkWhere(this.database, { tokenHash: hashToken(token) }) : Promise.resolve(null);
  }

  /** One link of any company, for whoever holds its cookie. */
  held(id: string): Promise<LinkRow | null> {
    return isRowId(id) ? linkWhere(this.database, { id }) : Promise.resolve(null);
  }

  /** One link of the company; null when there is none. */
  async byId(ctx: Context, id: string): Promise<SignedLink | null> {
    return batchedOne<SignedLink>(ctx, 'signed link', async (ids) => {
      const rows = await this.database.signedLink.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The links of a job, newest first, those that have ended too. */
  ofJob(ctx: Context, jobId: string): Promise<SignedLink[]> {
    return batchedMany<SignedLink>(ctx, 'signed links of job', async (ids) => {
      const rows = await this.database.signedLink.findMany({
        where: { companyId: ctx.companyId, jobId: { in: [...ids] } },
        orderBy: { id: 'desc' },
        take: 200,
      });
      return rows.map((row) => [row.jobId, row] as const);
    }).load(jobId);
  }

  /** The browsers in which a link is open, first opened first. */
  sessions(ctx: Context, linkId: string): Promise<LinkSession[]> {
    return batchedMany<LinkSession>(ctx, 'sessions of link', async (ids) => {
      const rows = await this.database.linkSession.findMany({
        where: { companyId: ctx.companyId, linkId: { in: [...ids] } },
        orderBy: { id: 'asc' },
      });
      return rows.map((row) => [row.linkId, row] as const);
    }).load(linkId);
  }
}

/** The link of an id or of a hashed token, with its job and the person it was mailed to; null when there is none. */
export async function linkWhere(
  tx: Transaction,
  where: { readonly id: string } | { readonly tokenHash: string },
): Promise<LinkRow | null> {
  const link = await tx.signedLink.findUnique({ where, include: { job: { select: { state: true } } } });
  if (!link) return null;
  const person = link.personId
    ? await tx.person.findUnique({ where: { id: link.personId }, select: { active: true } })
    : null;
  return { ...link, person };
}
