import { describe, expect, it } from '@jest/globals';
import type { FastifyReply } from 'fastify';
import { linkCookie, setLinkCookie } from './link-cookie.js';

const LINK = '0192f0c0-0000-7000-8000-000000000001';
const OTHER = '0192f0c0-0000-7000-8000-000000000002';

describe('the cookie of a signed link', () => {
  it('is found among others by the link it belongs to', () => {
    const header = `a=b; __Host-flagway-link-${OTHER}=theirs; __Host-flagway-link-${LINK}=ours`;
    expect(linkCookie(header, LINK)).toBe('ours');
    expect(linkCookie(header, OTHER)).toBe('theirs');
    expect(linkCookie(header, 'else')).toBeNull();
    expect(linkCookie(`__Host-flagway-link-${LINK}=`, LINK)).toBeNull();
    expect(linkCookie(undefined, LINK)).toBeNull();
  });

  it('is out of reach of scripts, and ends with the link', () => {
    const set: unknown[] = [];
    const reply = { setCookie: (...all: unknown[]) => set.push(...all) } as unknown as FastifyReply;
    setLinkCookie(reply, LINK, 'token', new Date('2031-03-01T00:00:00Z'));
    // RFC 6265bis, section 4.1.3.2: a name that begins so is only kept Secure, with Path=/ and without Domain.
    expect(set).toEqual([
      `__Host-flagway-link-${LINK}`,
      'token',
      {
        httpOnly: true,
        secure: true,
        sameSite: 'lax',
        path: '/',
        expires: new Date('2031-03-01T00:00:00Z'),
      },
    ]);
  });
});
