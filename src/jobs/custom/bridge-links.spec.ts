import { describe, expect, it } from '@jest/globals';
import type { LagIn, Link, LinkKind } from '../../generated/prisma/client.js';
import { bridgeLinks } from './bridge-links.js';

const link = (
  fromId: string,
  toId: string,
  kind: LinkKind = 'finishStart',
  lagMinutes = 0,
  lagIn: LagIn = 'elapsed',
): Link => ({
  id: `${fromId}-${toId}`,
  companyId: 'c',
  jobId: 'j',
  fromId,
  toId,
  kind,
  lagMinutes,
  lagIn,
  origin: 'template',
  revision: 1,
});

describe('links across a dropped phase', () => {
  it('join everything before it to everything after it', () => {
    const bridges = bridgeLinks([link('a', 'x'), link('b', 'x')], [link('x', 'c'), link('x', 'd')]);
    expect(bridges.map(({ fromId, toId }) => fromId + toId)).toEqual(['ac', 'ad', 'bc', 'bd']);
    expect(new Set(bridges.map(({ kind }) => kind))).toEqual(new Set(['finishStart']));
  });

  it('add up the lags; a working lag on either side keeps the whole in working time', () => {
    const [both] = bridgeLinks([link('a', 'x', 'finishStart', 60)], [link('x', 'c', 'finishStart', 120)]);
    expect(both).toMatchObject({ lagMinutes: 180, lagIn: 'elapsed' });
    const [mixed] = bridgeLinks(
      [link('a', 'x', 'finishStart', 60, 'working')],
      [link('x', 'c', 'finishStart', -15)],
    );
    expect(mixed).toMatchObject({ lagMinutes: 45, lagIn: 'working' });
  });

  it.each<[LinkKind, LinkKind, LinkKind]>([
    ['finishStart', 'finishStart', 'finishStart'],
    ['startStart', 'finishStart', 'startStart'],
    ['startStart', 'finishFinish', 'startFinish'],
    ['finishFinish', 'startStart', 'finishStart'],
    ['startFinish', 'startFinish', 'startFinish'],
    ['finishStart', 'finishFinish', 'finishFinish'],
  ])('tie the outer ends: %s then %s becomes %s', (into, outOf, kind) => {
    expect(bridgeLinks([link('a', 'x', into)], [link('x', 'c', outOf)])[0]?.kind).toBe(kind);
  });

  it('are none at the begin or the end of a job', () => {
    expect(bridgeLinks([], [link('x', 'c')])).toEqual([]);
    expect(bridgeLinks([link('a', 'x')], [])).toEqual([]);
  });
});
