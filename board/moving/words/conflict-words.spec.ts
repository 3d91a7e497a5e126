import { describe, expect, it } from '@jest/globals';
import type { Conflict } from '../../../shared/schedule/model.js';
import { slot } from '../../../shared/schedule/slot.js';
import { conflictWords } from './conflict-words.js';

const cause = { kind: 'now' } as const;
const pin = { phaseId: 'a', pin: slot(1), earliest: slot(2), cause };

describe('what a preview comes up against, in words', () => {
  it.each<[Conflict, RegExp | null]>([
    [{ code: 'pinBeforePredecessor', ...pin }, /^A would start before the work/],
    [{ code: 'pinBeforeGate', ...pin }, /clearance, a visit or a cure/],
    [{ code: 'pinInClosedTime', ...pin }, /closed hours/],
    [
      { code: 'pinMoved', phaseId: 'a', pin: slot(1), start: slot(2), cause },
      /crew or its equipment is taken/,
    ],
    [
      { code: 'lagExceeded', linkId: 'l', by: 4, phaseIds: ['a', 'b'], cause },
      /^B would come too late after A/,
    ],
    [{ code: 'clearanceLapsed', phaseId: 'a', clearanceId: 'c', expires: slot(1), start: slot(2) }, /lapsed/],
    [{ code: 'visitBeforeReady', inspectionId: 'i', booked: slot(1), ready: null }, /booked visit/],
    [{ code: 'beyondHorizon', phaseId: 'a', cause }, /^A would have no place/],
    [{ code: 'crewDoubled', crewId: 'c', phaseIds: ['a', 'b'] }, /against each other/],
    [{ code: 'gateUndated', phaseId: 'a', gateId: 'g' }, null],
    [{ code: 'dueMissed', jobId: 'j', due: slot(1), finish: slot(2) }, null],
    [{ code: 'commitmentBroken', phaseId: 'a', committed: slot(1), start: slot(2), cause }, null],
  ])('%j', (conflict, words) => {
    const said = conflictWords(conflict, (id) => id.toUpperCase());
    if (words === null) expect(said).toBeNull();
    else expect(said).toMatch(words);
  });
});
