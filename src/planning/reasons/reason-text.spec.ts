import { describe, expect, it } from '@jest/globals';
import { type ReasonNames, reasonText } from './reason-text.js';
import type { StoredStep } from './stored-reason.js';

const names: ReasonNames = {
  subject: 'Stone',
  zone: 'America/New_York',
  phase: (id) => (id === 'cure' ? 'Bed cure' : 'Mortar bed'),
  crew: () => 'Masons Reed',
  pool: () => 'Blankets',
  clearance: () => 'Permit',
  inspection: () => 'Footing',
};

const at = '2031-01-09T17:00:00.000Z';
const link = (kind: string, lagMinutes: number, lagIn = 'elapsed') => ({ kind, lagMinutes, lagIn });

describe('a reason in words', () => {
  const cases: [StoredStep, string][] = [
    [{ kind: 'now' }, 'Nothing holds Stone but the present: it can start at once.'],
    [{ kind: 'actual', at }, 'Stone has started, Thu 9 Jan 12:00.'],
    [
      { kind: 'link', at, phaseId: 'bed', link: link('finishStart', 0) },
      'Stone waits for Mortar bed (finish-start) until Thu 9 Jan 12:00.',
    ],
    [
      { kind: 'link', at, phaseId: 'bed', link: link('startStart', 90) },
      'Stone waits for Mortar bed (start-start, and 90 min) until Thu 9 Jan 12:00.',
    ],
    [
      { kind: 'link', at, phaseId: 'bed', link: link('finishFinish', -120) },
      'Stone waits for Mortar bed (finish-finish, less 2 h) until Thu 9 Jan 12:00.',
    ],
    [
      { kind: 'link', at, phaseId: 'bed', link: link('startFinish', 2880, 'working') },
      'Stone waits for Mortar bed (start-finish, and 2 d of open time) until Thu 9 Jan 12:00.',
    ],
    [
      { kind: 'mostLag', at, phaseId: 'bed' },
      'Stone is kept back until Thu 9 Jan 12:00, so that Mortar bed follows it soon enough.',
    ],
    [
      { kind: 'crew', at, crewId: 'c', phaseId: 'bed' },
      'Stone waits for Masons Reed, busy with Mortar bed until Thu 9 Jan 12:00.',
    ],
    [
      { kind: 'crew', at, crewId: 'c', phaseId: 'bed', ahead: 'priority' },
      'Stone waits for Masons Reed, busy with Mortar bed until Thu 9 Jan 12:00. That goes first: its job has the higher priority.',
    ],
    [
      { kind: 'equipment', at: null, poolId: 'p', phaseId: 'bed', releasedBy: null, ahead: 'previous' },
      'Stone waits for Blankets, out with Mortar bed. That goes first: it stood before this one in the plan before.',
    ],
    [
      { kind: 'visit-validity', at, inspectionId: 'i', phaseId: 'bed' },
      'The visit for "Footing" is put off, so that it is still valid when Mortar bed starts.',
    ],
    [
      { kind: 'equipment', at, poolId: 'p', phaseId: 'bed', releasedBy: 'cure' },
      'Stone waits for Blankets, out with Mortar bed, back with the end of Bed cure until Thu 9 Jan 12:00.',
    ],
    [
      { kind: 'equipment', at: null, poolId: 'p', phaseId: 'bed', releasedBy: null },
      'Stone waits for Blankets, out with Mortar bed.',
    ],
    [
      { kind: 'weather', at, weather: { cause: 'limit', text: 'Too cold: 28 °F, under 50 °F', hour: at } },
      'Stone waits for the weather until Thu 9 Jan 12:00: Too cold: 28 °F, under 50 °F (forecast for Thu 9 Jan 12:00).',
    ],
    [
      { kind: 'weather', at, weather: { cause: 'called', text: 'sleet' } },
      'Stone waits for the weather hold "sleet" until Thu 9 Jan 12:00.',
    ],
    [{ kind: 'clearance', at, clearanceId: 'c' }, 'Stone waits for Permit, there Thu 9 Jan 12:00.'],
    [
      { kind: 'clearance', at: null, clearanceId: 'c' },
      'Stone waits for Permit, and nobody knows when it comes.',
    ],
    [
      { kind: 'inspection', at, inspectionId: 'i', visit: { from: at, to: at } },
      'Stone waits for the inspection "Footing", visit Thu 9 Jan 12:00.',
    ],
    [
      { kind: 'cure', at, strength: { now: 612.4, needed: 1000 } },
      'Stone waits for a strength of 1000 psi, 612 psi now, predicted for Thu 9 Jan 12:00; only a measurement or a named person releases it.',
    ],
    [
      { kind: 'cure', at: null, strength: { now: null, needed: 1000 } },
      'Stone waits for a strength of 1000 psi, and nothing predicts it yet.',
    ],
    [
      { kind: 'notBefore', at, code: 'commitment' },
      'Stone is promised for Thu 9 Jan 12:00, so it does not start earlier.',
    ],
    [{ kind: 'pin', at }, 'The office has fixed the start of Stone: Thu 9 Jan 12:00.'],
    [{ kind: 'calendar', at }, 'Stone waits for open hours, which begin Thu 9 Jan 12:00.'],
    [
      { kind: 'unplanned', code: 'predecessorUnplanned', phaseId: 'bed' },
      'Stone has no place in the plan, because Mortar bed has none.',
    ],
    [
      { kind: 'unplanned', code: 'noStretch', phaseId: 'x' },
      'Stone has no place in the plan: it must not pause, and no open stretch is as long as it.',
    ],
    [
      { kind: 'visit-phase', at, inspectionId: 'i', phaseId: 'bed' },
      'The visit for "Footing" waits for Mortar bed to be finished.',
    ],
    [
      { kind: 'visit-notice', at, inspectionId: 'i' },
      'The visit for "Footing" is Thu 9 Jan 12:00 at the earliest: the authority asks for notice.',
    ],
    [
      { kind: 'visit-hours', at, inspectionId: 'i' },
      'The visit for "Footing" waits for the visiting hours of the authority, Thu 9 Jan 12:00.',
    ],
    [
      { kind: 'visit-booked', at, inspectionId: 'i' },
      'The visit for "Footing" is booked for Thu 9 Jan 12:00.',
    ],
    [{ kind: 'visit-unplanned', inspectionId: 'i' }, 'The visit for "Footing" has no place in the plan.'],
  ];

  it.each(cases)('%j', (step, text) => {
    expect(reasonText(step, names)).toBe(text);
  });

  it('is told in the time of the site, summer and winter', () => {
    const text = (instant: string, zone: string) =>
      reasonText({ kind: 'pin', at: instant }, { ...names, zone });
    expect(text('2031-07-01T16:00:00Z', 'America/New_York')).toMatch(/Tue 1 Jul 12:00/);
    expect(text('2031-01-01T16:00:00Z', 'America/New_York')).toMatch(/Wed 1 Jan 11:00/);
    expect(text('2031-01-01T05:30:00Z', 'America/Denver')).toMatch(/Tue 31 Dec 22:30/);
    expect(text('2031-01-01T05:00:00Z', 'America/New_York')).toMatch(/Wed 1 Jan 00:00/);
  });
});
