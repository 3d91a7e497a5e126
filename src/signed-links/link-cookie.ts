import type { FastifyReply } from 'fastify';

/** One cookie for each link, so that a browser may hold several; kept only when Secure, host-only, for the whole site. */
const nameOf = (linkId: string): string => `__Host-flagway-link-${linkId}`;

/** Lax, not strict: a press in a mail program comes from another site, and is to find the page that is open already. */
const KIND = { httpOnly: true, secure: true, sameSite: 'lax', path: '/' } as const;

/** Sets the cookie of a link: out of reach of scripts, and sent with no request that another site makes in the background. */
export function setLinkCookie(reply: FastifyReply, linkId: string, token: string, expires: Date): void {
  reply.setCookie(nameOf(linkId), token, { ...KIND, expires });
}

/** The token of a link in a Cookie header, if there is one. */
export function linkCookie(cookieHeader: string | undefined, linkId: string): string | null {
  const start = `${nameOf(linkId)}=`;
  const pair = cookieHeader
    ?.split(';')
    .map((part) => part.trim())
    .find((part) => part.startsWith(start));
  return pair?.slice(start.length) || null;
}
