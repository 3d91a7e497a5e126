import { describe, expect, it } from '@jest/globals';
import { type PhaseWithDates, stretchesOf } from './stretches-of.js';

const at = (day: number, hour = 0) => new Date(Date.UTC(2031, 0, day, hour));
const ms = (day: number, hour = 0) => at(day, hour).getTime();
const planned = {
  startAt: at(6, 13),
  finishAt: at(7, 15),
  segments: [
    [ms(6, 13), ms(6, 21)],
    [ms(7, 13), ms(7, 15)],
  ],
};
const phase = (more: Partial<PhaseWithDates> = {}): PhaseWithDates => ({
  kind: 'stone',
  state: 'waiting',
  actualStart: null,
  actualFinish: null,
  planned,
  commitments: [],
  ...more,
});
const SEGMENTS = [
  { from: ms(6, 13), until: ms(6, 21) },
  { from: ms(7, 13), until: ms(7, 15) },
];

describe('when a phase is worked on', () => {
  it('is what the plan says while nothing was agreed', () => {
    expect(stretchesOf(phase())).toEqual({ stretches: SEGMENTS, agreed: false });
  });

  it('is what was agreed, with the pauses of a plan that keeps to it', () => {
    const kept = { startAt: at(6, 13), finishAt: at(7, 15) };
    expect(stretchesOf(phase({ commitments: [kept] }))).toEqual({ stretches: SEGMENTS, agreed: true });
  });

  it('stays what was agreed when the plan has moved, until the office decides', () => {
    const told = { startAt: at(3, 13), finishAt: at(3, 21) };
    expect(stretchesOf(phase({ commitments: [told] }))).toEqual({
      stretches: [{ from: ms(3, 13), until: ms(3, 21) }],
      agreed: true,
    });
  });

  it('is what it was once it is done', () => {
    const done = phase({ state: 'done', actualStart: at(2, 13), actualFinish: at(2, 20) });
    expect(stretchesOf(done)).toEqual({
      stretches: [{ from: ms(2, 13), until: ms(2, 20) }],
      agreed: true,
    });
  });

  it('counts the day it began on, and goes on as planned', () => {
    const { stretches, agreed } = stretchesOf(phase({ state: 'started', actualStart: at(5, 14) }));
    expect(agreed).toBe(true);
    expect(stretches).toEqual([{ from: ms(5, 14), until: ms(5, 14) + 1 }, ...SEGMENTS]);
  });

  it('is unknown while there is no plan, and an instant for what takes no time', () => {
    expect(stretchesOf(phase({ planned: null }))).toEqual({ stretches: [], agreed: false });
    const moment = { startAt: at(6), finishAt: at(6), segments: [] };
    expect(stretchesOf(phase({ planned: moment })).stretches).toEqual([{ from: ms(6), until: ms(6) + 1 }]);
  });
});
