import { describe, expect, it } from '@jest/globals';
import { makeAxis } from '../../board/layout/axis.js';
import { layOutRow } from '../../board/layout/lay-out-row.js';
import { trialPhase, trialPlan } from '../../board/layout/testing/trial-phase.js';
import { daysFrom } from '../../time/zone-days.js';
import type { Place, Preview } from '../preview.js';
import { placeMarks } from './place-marks.js';

const axis = makeAxis(daysFrom('2031-01-13', 14, 'America/New_York'), 80);
const at = (iso: string) => Date.parse(iso);
const now = at('2031-01-13T10:00:00Z');

const phases = [
  trialPhase({ id: 'a' }),
  trialPhase({ id: 'b', hatch: 'stone', planned: trialPlan('2031-01-13T13:00:00Z', '2031-01-13T18:00:00Z') }),
  trialPhase({
    id: 'cure',
    durationKind: 'elapsed',
    planned: trialPlan('2031-03-13T13:00:00Z', '2031-03-14T18:00:00Z'),
  }),
];
const row = { id: 'j1', title: 'Landing', note: '', job: null, phases };
const placed = layOutRow(row, axis, now, 'job');

const place = (from: string, to: string): Place => ({ from: at(from), to: at(to), crewId: null });
const preview = (places: Record<string, Place | null>, more: Partial<Preview> = {}): Preview => ({
  tried: { phaseId: 'a', way: 'notBefore', at: now, crewId: null },
  lands: places['a'] ?? null,
  places: new Map(Object.entries(places)),
  ends: [],
  broken: [],
  conflicts: [],
  ...more,
});

describe('new places while a move is tried', () => {
  it('stand in the lanes of their bars', () => {
    const marks = placeMarks(
      placed,
      preview({
        a: place('2031-01-14T12:00:00Z', '2031-01-14T20:00:00Z'),
        b: place('2031-01-15T12:00:00Z', '2031-01-15T20:00:00Z'),
      }),
      axis,
    );
    expect(marks.map(({ phaseId, top, picked, hatch }) => [phaseId, top, picked, hatch])).toEqual([
      ['a', placed.bars.find(({ phase }) => phase.id === 'a')?.top, true, 'earth'],
      ['b', placed.bars.find(({ phase }) => phase.id === 'b')?.top, false, 'stone'],
    ]);
    expect(marks[0]?.left).toBeCloseTo(axis.x(at('2031-01-14T12:00:00Z')), 9);
  });

  it('come in from outside the days, into the first lane, and say that they are waits', () => {
    const marks = placeMarks(
      placed,
      preview({ cure: place('2031-01-16T12:00:00Z', '2031-01-18T20:00:00Z') }),
      axis,
    );
    expect(marks.map(({ phaseId, wait, top }) => [phaseId, wait, top])).toEqual([
      ['cure', true, placed.bars[0]?.top],
    ]);
  });

  it('are none outside the days, and without a place', () => {
    expect(
      placeMarks(
        placed,
        preview({ a: null, b: place('2031-04-16T12:00:00Z', '2031-04-18T20:00:00Z') }),
        axis,
      ),
    ).toEqual([]);
  });

  it('mark the promise that moves, and the phase that stays where it is tried', () => {
    const lands = place('2031-01-13T12:00:00Z', '2031-01-13T20:00:00Z');
    const marks = placeMarks(
      placed,
      preview(
        { b: place('2031-01-15T12:00:00Z', '2031-01-15T20:00:00Z') },
        { lands, broken: [{ phaseId: 'b', name: '', crew: null }] },
      ),
      axis,
    );
    expect(marks.map(({ phaseId, picked, broken }) => [phaseId, picked, broken])).toEqual([
      ['a', true, false],
      ['b', false, true],
    ]);
  });
});
