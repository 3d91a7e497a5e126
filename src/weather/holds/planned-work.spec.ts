import { describe, expect, it } from '@jest/globals';
import { plannedWork } from './planned-work.js';

const at = (hour: number) => new Date(Date.UTC(2031, 0, 6, hour));
const work = (more: Partial<Parameters<typeof plannedWork>[0]>) =>
  plannedWork({
    state: 'waiting',
    pinnedStart: null,
    durationMinutes: 240,
    planned: { segments: [[Number(at(13)), Number(at(17))]] },
    commitments: [],
    ...more,
  }).map(({ from, to }) => [new Date(from).getUTCHours(), new Date(to).getUTCHours()]);

describe('when people expect work', () => {
  it('is when the plan has it', () => {
    expect(work({})).toEqual([[13, 17]]);
    expect(work({ planned: null })).toEqual([]);
  });

  it('is when it is promised too, though the plan has left that', () => {
    expect(work({ commitments: [{ startAt: at(8), finishAt: at(11) }] })).toEqual([
      [13, 17],
      [8, 11],
    ]);
  });

  it('is the first shift of a longer promise, and of a pin', () => {
    const long = { durationMinutes: 20 * 60, planned: null };
    expect(work({ ...long, commitments: [{ startAt: at(8), finishAt: at(36) }] })).toEqual([[8, 16]]);
    expect(work({ ...long, pinnedStart: at(9) })).toEqual([[9, 17]]);
    expect(work({ planned: null, pinnedStart: at(9) })).toEqual([[9, 13]]);
  });

  it('is the plan alone once the work has started', () => {
    expect(work({ state: 'started', pinnedStart: at(8) })).toEqual([[13, 17]]);
  });
});
