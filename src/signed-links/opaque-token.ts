import { createHash, randomBytes } from 'node:crypto';

/** A fresh token: 256 random bits in 43 letters that fit into an address and into a cookie. */
export const makeToken = (): string => randomBytes(32).toString('base64url');

/** How a token is kept. It is as random as a key, so a plain hash is enough. */
export const hashToken = (token: string): string => createHash('sha256').update(token).digest('hex');

/** Whether a text has the form of a token; no other is worth looking up. */
export const isToken = (text: string): boolean => /^[A-Za-z0-9_-]{43}$/.test(text);
