import { describe, expect, it } from '@jest/globals';
import type { StoredConflict } from '../replan/stored-conflict.js';
import { type ConflictNames, conflictText } from './conflict-text.js';

const names: ConflictNames = {
  subject: 'Stone',
  zone: 'America/New_York',
  job: '104, Larch Street',
  others: ['Stone', 'Block'],
  phase: () => 'Mortar bed',
  crew: () => 'Masons Reed',
  pool: () => 'Blankets',
  clearance: () => 'Mark-out',
  inspection: () => 'Footing',
};
const asked = '2031-01-09T17:00:00.000Z';
const given = '2031-01-10T13:00:00.000Z';
const cause = { kind: 'pin', at: asked };
const PIN = 'The office has fixed the start of Stone: Thu 9 Jan 12:00.';

describe('a conflict in words', () => {
  const cases: [StoredConflict, string][] = [
    [
      { code: 'cycle' },
      'Stone, Block of job 104, Larch Street wait for each other in a circle; remove one of their links.',
    ],
    [
      { code: 'lagCycle', needed: 90 },
      'The greatest lags between Stone, Block of job 104, Larch Street cannot be met by any plan: the work between them takes 1.5 h too long. Lengthen one of them or shorten the work.',
    ],
    [
      { code: 'lagExceeded', needed: 30, cause },
      `Stone comes 0.5 h too late after Stone, Block. ${PIN} Move the earlier one, or lift what holds the later one.`,
    ],
    [
      { code: 'inspectionLapsed', asked, given },
      'The visit for "Footing" is valid until Fri 10 Jan 08:00, but Stone starts Thu 9 Jan 12:00. Ask for another visit, or start sooner.',
    ],
    [
      { code: 'pinBeforeGate', asked, given, cause },
      `The fixed start of Stone, Thu 9 Jan 12:00, is too early; Fri 10 Jan 08:00 is possible. ${PIN} Move it or take it away.`,
    ],
    [
      { code: 'pinInClosedTime', asked, given, cause },
      `The fixed start of Stone, Thu 9 Jan 12:00, falls into closed time; Fri 10 Jan 08:00 is possible. ${PIN} Move it or open the hours.`,
    ],
    [
      { code: 'pinMoved', asked, given, cause },
      `The fixed start of Stone, Thu 9 Jan 12:00, cannot be kept; planned for Fri 10 Jan 08:00. ${PIN}`,
    ],
    [
      { code: 'commitmentBroken', asked, given: null, cause },
      `Stone was promised for Thu 9 Jan 12:00 and has no place in the plan. ${PIN}`,
    ],
    [
      { code: 'dueMissed', asked, given },
      'Job 104, Larch Street is due Thu 9 Jan 12:00 and finishes Fri 10 Jan 08:00. Raise its priority, add a crew or agree another day.',
    ],
    [
      { code: 'visitBeforeReady', asked, given },
      'The visit for "Footing" is booked for Thu 9 Jan 12:00, but its work is finished Fri 10 Jan 08:00. Book another window.',
    ],
    [{ code: 'crewDoubled' }, 'Masons Reed is on Stone and Block at once. Correct the crew of one of them.'],
    [
      { code: 'poolTooSmall', needed: 5, available: 4 },
      'Stone needs 5 of Blankets; the company owns 4. Add equipment or change the phase.',
    ],
    [
      { code: 'poolOverdrawn', asked, given },
      'More of Blankets is out than the company owns, Thu 9 Jan 12:00 to Fri 10 Jan 08:00: Stone, Block. Correct the records or bring some back.',
    ],
    [
      { code: 'noStretch', needed: 600, available: 480 },
      'Stone must not pause and takes 10 h, but the longest open stretch is 8 h. Lengthen a day or split the phase.',
    ],
    [{ code: 'beyondHorizon', cause }, `Stone finds no place as far ahead as is planned. ${PIN}`],
    [
      { code: 'releaseMissing', cause },
      `Stone would keep its equipment for good, because Stone, Block has no place in the plan. ${PIN}`,
    ],
  ];

  it.each(cases)('%j', (conflict, text) => {
    expect(conflictText(conflict, names)).toBe(text);
  });
});
