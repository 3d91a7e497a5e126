import { describe, expect, it } from '@jest/globals';
import { daysFrom } from '../../time/zone-days.js';
import { makeAxis } from './axis.js';
import { layOutRow } from './lay-out-row.js';
import { MEASURES } from './measures.js';
import { type BoardRow, weatherKindsOf } from './rows.js';
import { trialCommitment, trialPhase, trialPlan } from './testing/trial-phase.js';

const axis = makeAxis(daysFrom('2031-01-13', 14, 'America/New_York'), 80);
const NOW = Date.parse('2031-01-13T16:00:00Z');
const row = (phases: BoardRow['phases']): BoardRow => ({
  id: 'r',
  title: 'Row',
  note: '',
  job: null,
  phases,
});

describe('laying out a row', () => {
  it('leaves out what the days do not touch', () => {
    const { bars } = layOutRow(
      row([
        trialPhase({ id: 'in' }),
        trialPhase({ id: 'before', planned: trialPlan('2031-01-10T12:00:00Z', '2031-01-10T20:00:00Z') }),
        trialPhase({ id: 'after', planned: trialPlan('2031-01-27T12:00:00Z', '2031-01-27T20:00:00Z') }),
        trialPhase({ id: 'nowhere', planned: null }),
      ]),
      axis,
      NOW,
      'job',
    );
    expect(bars.map(({ phase }) => phase.id)).toEqual(['in']);
  });

  it('marks what goes on beyond the days', () => {
    const { bars } = layOutRow(
      row([trialPhase({ planned: trialPlan('2031-01-10T12:00:00Z', '2031-01-30T20:00:00Z') })]),
      axis,
      NOW,
      'job',
    );
    expect(bars[0]).toMatchObject({ left: 0, width: axis.width, cutLeft: true, cutRight: true });
  });

  it('gives the shortest phase a target of 24 pixels, inside the sheet even at its right edge', () => {
    // WCAG 2.2, success criterion 2.5.8 Target Size (Minimum): 24 by 24 CSS pixels.
    const { bars } = layOutRow(
      row([trialPhase({ planned: trialPlan('2031-01-27T04:00:00Z', '2031-01-27T04:15:00Z') })]),
      axis,
      NOW,
      'job',
    );
    expect(bars[0]?.reach).toBeGreaterThanOrEqual(24);
    expect((bars[0]?.left ?? 0) + (bars[0]?.reach ?? 0)).toBeLessThanOrEqual(axis.width);
  });

  it('puts phases of the same hours into lanes of their own and grows the row', () => {
    const one = layOutRow(row([trialPhase()]), axis, NOW, 'job');
    const two = layOutRow(row([trialPhase(), trialPhase({ id: 'p2' })]), axis, NOW, 'job');
    expect(new Set(two.bars.map(({ top }) => top)).size).toBe(2);
    expect(two.height).toBeGreaterThan(one.height);
    expect(one.height).toBeGreaterThanOrEqual(MEASURES.leastRow);
  });

  it('names the job on a bar only where rows are crews', () => {
    const name = (by: 'job' | 'crew') => layOutRow(row([trialPhase()]), axis, NOW, by).bars[0]?.name;
    expect([name('job'), name('crew')]).toEqual(['Dig to frost depth', '101 Dig to frost depth']);
  });

  it('shows how much of a started phase is past, and its committed dates where they differ', () => {
    const { bars } = layOutRow(
      row([
        trialPhase({
          state: 'started',
          actualStart: '2031-01-13T12:00:00Z',
          commitment: trialCommitment('2031-01-14T12:00:00Z', '2031-01-14T20:00:00Z'),
        }),
      ]),
      axis,
      NOW,
      'job',
    );
    expect(bars[0]?.past).toBeCloseTo(axis.x(NOW) - axis.x(Date.parse('2031-01-13T12:00:00Z')), 9);
    expect(bars[0]?.rule?.left).toBeCloseTo(axis.x(Date.parse('2031-01-14T12:00:00Z')), 9);
  });
});

describe('a row under the weather of its site', () => {
  it('has its bars below the strip and is as much taller', () => {
    const bare = layOutRow(row([trialPhase(), trialPhase({ id: 'p2' })]), axis, NOW, 'job');
    const under = layOutRow(row([trialPhase(), trialPhase({ id: 'p2' })]), axis, NOW, 'job', 57);
    expect(under.bars.map(({ top }) => top)).toEqual(bare.bars.map(({ top }) => top + 57));
    expect(under.height).toBe(bare.height + 57);
  });

  it('has the kinds of work that are still to do, each once', () => {
    const kinds = weatherKindsOf(
      row([
        trialPhase({ id: 'a', weatherLimitKey: 'stone' }),
        trialPhase({ id: 'b', weatherLimitKey: 'sealant', state: 'started' }),
        trialPhase({ id: 'c', weatherLimitKey: 'stone' }),
        trialPhase({ id: 'd', weatherLimitKey: 'concrete', state: 'done' }),
        trialPhase({ id: 'e' }),
      ]),
    );
    expect(kinds).toEqual(['stone', 'sealant']);
  });
});
