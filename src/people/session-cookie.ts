import type { FastifyReply } from 'fastify';

/** Browsers keep a cookie of this prefix only when it is Secure, host-only and for the whole site. */
const NAME = '__Host-flagway';

/** Sets the session's cookie: out of reach of scripts, never sent from another site. */
export function setSessionCookie(reply: FastifyReply, token: string, expires: Date): void {
  reply.setCookie(NAME, token, { httpOnly: true, secure: true, sameSite: 'strict', path: '/', expires });
}

/** Takes the session's cookie away. */
export function clearSessionCookie(reply: FastifyReply): void {
  reply.clearCookie(NAME, { httpOnly: true, secure: true, sameSite: 'strict', path: '/' });
}

/** The session token in a Cookie header, if there is one. */
export function sessionToken(cookieHeader: string | undefined): string | null {
  const pair = cookieHeader
    ?.split(';')
    .map((part) => part.trim())
    .find((part) => part.startsWith(`${NAME}=`));
  return pair?.slice(NAME.length + 1) || null;
}
