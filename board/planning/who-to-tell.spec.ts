import { describe, expect, it } from '@jest/globals';
import { whoToTell } from './who-to-tell.js';

const north = { id: 'n', name: 'North masons' };
const south = { id: 's', name: 'South masons' };
const phase = (name: string) => ({ name, job: { number: 101 } });

describe('who must be told of a proposal', () => {
  it('is nobody when nothing promised moves', () => {
    expect(whoToTell([])).toEqual([]);
  });

  it('is a crew once, with all of its phases, and the crews in the order of their names', () => {
    const moved = [
      { phase: phase('walk'), crewBefore: south, crewAfter: south },
      { phase: phase('steps'), crewBefore: north, crewAfter: north },
      { phase: phase('landing'), crewBefore: south, crewAfter: south },
    ];
    expect(whoToTell(moved)).toEqual([
      { crew: 'North masons', phases: ['101 steps'] },
      { crew: 'South masons', phases: ['101 walk', '101 landing'] },
    ]);
  });

  it('is both crews where one takes over from the other, and none for a wait', () => {
    expect(whoToTell([{ phase: phase('steps'), crewBefore: north, crewAfter: south }])).toHaveLength(2);
    expect(whoToTell([{ phase: phase('cure'), crewBefore: null, crewAfter: null }])).toEqual([]);
  });

  it('names a phase that is gone as such', () => {
    expect(whoToTell([{ phase: null, crewBefore: north, crewAfter: null }])).toEqual([
      { crew: 'North masons', phases: ['a phase that is gone'] },
    ]);
  });
});
