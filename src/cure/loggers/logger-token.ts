import { createHash, randomBytes } from 'node:crypto';

/** A fresh token of a logger: 256 random bits. It is shown once; the database knows only its hash. */
export const makeToken = (): string => randomBytes(32).toString('base64url');

/** How a token is kept. The token is as random as a key, so a plain hash is enough. */
export const hashToken = (token: string): string => createHash('sha256').update(token).digest('hex');

const BEARER = /^Bearer ([A-Za-z0-9_-]{20,200})$/;

/** The token of an `Authorization: Bearer …` header; null when there is none of that form. */
export const bearerToken = (header: string | undefined): string | null =>
  BEARER.exec(header ?? '')?.[1] ?? null;
