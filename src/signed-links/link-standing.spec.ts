import { describe, expect, it } from '@jest/globals';
import { standingOf } from './link-standing.js';

const NOW = new Date('2031-01-06T14:00:00Z');
const link = (more: object = {}) => ({
  revokedAt: null,
  expiresAt: new Date('2031-01-07T14:00:00Z'),
  person: null,
  ...more,
});

describe('a signed link', () => {
  it('is live until its last instant, and not in it', () => {
    expect(standingOf(link(), NOW)).toBe('live');
    expect(standingOf(link({ expiresAt: new Date(NOW.getTime() + 1) }), NOW)).toBe('live');
    expect(standingOf(link({ expiresAt: NOW }), NOW)).toBe('expired');
  });

  it('ends when it is taken back, whatever time is left', () => {
    expect(standingOf(link({ revokedAt: NOW }), NOW)).toBe('revoked');
    expect(standingOf(link({ revokedAt: NOW, expiresAt: NOW }), NOW)).toBe('revoked');
  });

  it('ends with the account of the person it was mailed to', () => {
    expect(standingOf(link({ person: { active: true } }), NOW)).toBe('live');
    expect(standingOf(link({ person: { active: false } }), NOW)).toBe('revoked');
  });
});
