import { describe, expect, it } from '@jest/globals';
import { noQuantities } from '../quantities/quantity-names.js';
import type { TemplateLink, TemplatePhase } from '../template/template.js';
import { checkedEntry } from '../testing/checked-entry.js';
import { expandLinks } from './expand-links.js';
import { turnOf, type ExpandedPhase } from './expanded-phase.js';

const entry = checkedEntry();
const of = (kind: string, scope: TemplatePhase['scope']): TemplatePhase => ({
  kind,
  name: kind,
  scope,
  hatch: 'none',
  trade: 'mason',
  duration: { kind: 'elapsed', minutes: 0, source: { mark: 'C', text: 'test' } },
  continuity: 'continuous',
  weatherLimits: null,
});
const job = (kind: string): ExpandedPhase => ({
  key: kind,
  of: of(kind, 'job'),
  area: null,
  set: null,
  quantities: noQuantities(),
});
const inAreas = (kind: string): ExpandedPhase[] =>
  entry.areas.map((area) => ({
    key: `${kind}.${area.key}`,
    of: of(kind, 'area'),
    area,
    set: entry.heatingSets[0] ?? null,
    quantities: noQuantities(),
  }));
const inSet = (kind: string): ExpandedPhase => ({
  key: `${kind}.set-1`,
  of: of(kind, 'set'),
  area: null,
  set: entry.heatingSets[0] ?? null,
  quantities: noQuantities(),
});
const PHASES = [job('a'), ...inAreas('b'), ...inAreas('c'), inSet('d')];

const link = (from: string, to: string, more: Partial<TemplateLink> = {}): TemplateLink => ({
  from,
  to,
  kind: 'finishStart',
  pairing: 'every',
  lag: 0,
  lagIn: 'elapsed',
  ...more,
});
const pairs = (...links: TemplateLink[]) => expandLinks(links, PHASES).map((one) => `${one.from} ${one.to}`);

describe('pairing', () => {
  it('every joins all with all', () => {
    expect(pairs(link('a', 'b'))).toEqual(['a b.landing', 'a b.steps', 'a b.walk']);
    expect(pairs(link('b', 'c'))).toHaveLength(9);
  });

  it('sameArea joins what lies in one area', () => {
    expect(pairs(link('b', 'c', { pairing: 'sameArea' }))).toEqual([
      'b.landing c.landing',
      'b.steps c.steps',
      'b.walk c.walk',
    ]);
    expect(pairs(link('a', 'b', { pairing: 'sameArea' }))).toEqual([]);
  });

  it('nextInSet joins an area with the one the cable runs into next', () => {
    expect(pairs(link('b', 'b', { pairing: 'nextInSet' }))).toEqual(['b.landing b.steps', 'b.steps b.walk']);
  });

  it('firstOfSet and lastOfSet join with where the cable begins and ends', () => {
    expect(pairs(link('a', 'b', { pairing: 'firstOfSet' }))).toEqual(['a b.landing']);
    expect(pairs(link('b', 'd', { pairing: 'lastOfSet' }))).toEqual(['b.walk d.set-1']);
  });

  it('sameSet joins every area of a set with what belongs to it', () => {
    expect(pairs(link('b', 'd', { pairing: 'sameSet' }))).toEqual([
      'b.landing d.set-1',
      'b.steps d.set-1',
      'b.walk d.set-1',
    ]);
    expect(pairs(link('a', 'd', { pairing: 'sameSet' }))).toEqual([]);
  });

  it('firstOfSet and lastOfSet leave out areas that no set runs through', () => {
    const unheated = inAreas('b').map((phase) => ({ ...phase, set: null }));
    const phases = [job('a'), ...unheated];
    expect(expandLinks([link('a', 'b', { pairing: 'firstOfSet' })], phases)).toEqual([]);
    expect(expandLinks([link('b', 'a', { pairing: 'lastOfSet' })], phases)).toEqual([]);
  });

  it('nothing waits for itself', () => {
    expect(pairs(link('a', 'a'))).toEqual([]);
    expect(pairs(link('b', 'b', { pairing: 'sameArea' }))).toEqual([]);
  });

  it('a filter leaves out areas that do not fit', () => {
    expect(pairs(link('a', 'b', { where: { kinds: ['walk'] } }))).toEqual(['a b.walk']);
    expect(pairs(link('a', 'b', { where: { heated: false } }))).toEqual([]);
  });

  it('a kind that does not occur gives no link', () => {
    expect(pairs(link('a', 'nowhere'), link('nowhere', 'a'))).toEqual([]);
  });
});

describe('lags', () => {
  it("the set's days of cure become minutes by the clock", () => {
    const [found] = expandLinks([link('b', 'd', { pairing: 'lastOfSet', lag: 'setCureDays' })], PHASES);
    expect(found).toMatchObject({ lagMinutes: 28 * 1440, lagIn: 'elapsed' });
  });

  it('of two links of one kind between the same two the longer stays', () => {
    const both = [link('a', 'd', { lag: 60 }), link('a', 'd', { lag: 30 }), link('a', 'd', { lag: 90 })];
    expect(expandLinks(both, PHASES)).toEqual([
      { from: 'a', to: 'd.set-1', kind: 'finishStart', lagMinutes: 90, lagIn: 'elapsed' },
    ]);
  });

  it('links of different kinds between the same two both stay', () => {
    const both = [link('a', 'd'), link('a', 'd', { kind: 'finishFinish', lag: -30, lagIn: 'working' })];
    expect(expandLinks(both, PHASES)).toHaveLength(2);
    expect(expandLinks(both, PHASES)[1]).toMatchObject({
      kind: 'finishFinish',
      lagMinutes: -30,
      lagIn: 'working',
    });
  });
});

describe('the turn of an area', () => {
  it('is its place in the set, and none without one', () => {
    expect(inAreas('b').map(turnOf)).toEqual([0, 1, 2]);
    expect(turnOf(job('a'))).toBe(-1);
    expect(turnOf({ ...(inAreas('b')[0] ?? job('a')), set: null })).toBe(-1);
  });
});
