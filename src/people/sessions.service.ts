import { createHash, randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock/clock.js';
import type { Actor } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { Authenticator } from '../platform/graphql/authenticator.js';
import { passwordMatches } from './passwords.js';
import { sessionToken } from './session-cookie.js';

const DAYS = 24 * 60 * 60 * 1000;
const SESSION_LIFE = 30 * DAYS;

/** A fresh session: the token goes into the cookie and nowhere else. */
export interface FreshSession {
  readonly token: string;
  readonly expiresAt: Date;
  readonly personId: string;
}

/** Sessions with opaque tokens; the database knows only their hashes, and a revoked session ends at once. */
@Injectable()
export class SessionsService extends Authenticator {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {
    super();
  }

  /** A session for the person with this e-mail and password, or null without saying which of the two was wrong. */
  async signIn(email: string, password: string): Promise<FreshSession | null> {
    const person = await this.database.person.findUnique({ where: { email: email.trim().toLowerCase() } });
    const matches = await passwordMatches(person?.passwordHash, password);
    return person && person.active && matches ? this.open(person.id) : null;
  }

  /** Opens a session for a person whose identity is established. */
  async open(personId: string): Promise<FreshSession> {
    const token = randomBytes(32).toString('base64url');
    const now = this.clock.now();
    const expiresAt = new Date(now.getTime() + SESSION_LIFE);
    await this.database.session.create({
      data: { personId, tokenHash: hashToken(token), createdAt: now, expiresAt },
    });
    return { token, expiresAt, personId };
  }

  async revoke(token: string): Promise<void> {
    await this.database.session.updateMany({
      where: { tokenHash: hashToken(token), revokedAt: null },
      data: { revokedAt: this.clock.now() },
    });
  }

  override async actorOf(cookieHeader: string | undefined): Promise<Actor | null> {
    const token = sessionToken(cookieHeader);
    if (!token) return null;
    const session = await this.database.session.findUnique({
      where: { tokenHash: hashToken(token) },
      include: { person: true },
    });
    const live =
      session && !session.revokedAt && session.expiresAt > this.clock.now() && session.person.active;
    if (!live) return null;
    const { id, companyId, role, name } = session.person;
    return { personId: id, companyId, role, name };
  }
}

const hashToken = (token: string): string => createHash('sha256').update(token).digest('hex');
