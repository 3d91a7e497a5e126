import { describe, expect, it } from '@jest/globals';
import { type Filters, kindsOf, narrowed, narrows, NO_FILTERS } from './filters.js';
import { type BoardData, rowsByCrew, rowsByJob } from './rows.js';
import { trialPhase, trialPlan } from './testing/trial-phase.js';

const job = (id: string, number: number, name: string, address: string) => ({
  id,
  number,
  name,
  site: { id: `site of ${id}`, address, town: 'Alder Bend', weatherHolds: [] },
});

const plan = trialPlan('2031-01-13T12:00:00Z', '2031-01-13T20:00:00Z');
const board = {
  jobs: [job('j1', 101, 'Larch Street', '14 Larch Street'), job('j2', 102, 'Mill Lane', '2 Mill Lane')],
  crews: [
    { id: 'c1', name: 'First masons', trades: ['mason'] },
    { id: 'c2', name: 'Diggers', trades: ['labour'] },
  ],
  phases: [
    trialPhase({
      id: 'dig',
      name: 'Dig',
      trade: 'labour',
      planned: { ...plan, crew: { id: 'c2', name: 'Diggers' } },
    }),
    trialPhase({ id: 'block', name: 'Block', trade: 'mason' }),
    trialPhase({
      id: 'cure',
      name: 'Bed cure',
      trade: null,
      durationKind: 'elapsed',
      planned: { ...plan, crew: null },
    }),
    trialPhase({ id: 'stone', name: 'Stone', trade: 'mason', job: { id: 'j2', number: 102 } }),
  ],
  conflicts: [
    { kind: 'pinMoved', text: '', phase: { id: 'block' }, job: { id: 'j1', number: 101 } },
    { kind: 'dueMissed', text: '', phase: null, job: { id: 'j2', number: 102 } },
  ],
} as unknown as BoardData;

const left = (filters: Partial<Filters>) =>
  narrowed(rowsByJob(board), board, { ...NO_FILTERS, ...filters }).map(({ id, phases }) => [
    id,
    phases.map((phase) => phase.id),
  ]);

describe('the board narrowed', () => {
  it('is the same rows when nothing is asked for', () => {
    const rows = rowsByJob(board);
    expect(narrowed(rows, board, { ...NO_FILTERS, search: '  ' })).toBe(rows);
    expect(narrows(NO_FILTERS)).toBe(false);
  });

  it.each<[string, Partial<Filters>, unknown]>([
    [
      'to a crew',
      { crew: 'c1' },
      [
        ['j1', ['block']],
        ['j2', ['stone']],
      ],
    ],
    ['to a site', { site: 'site of j2' }, [['j2', ['stone']]]],
    ['to a trade', { kind: 'labour' }, [['j1', ['dig']]]],
    ['to waits', { kind: 'wait' }, [['j1', ['cure']]]],
    [
      'to conflicts, of a phase or of a whole job',
      { onlyConflicts: true },
      [
        ['j1', ['block']],
        ['j2', ['stone']],
      ],
    ],
    ['by words, all of them, anywhere', { search: '101 BED' }, [['j1', ['cure']]]],
    ['by an address', { search: 'mill' }, [['j2', ['stone']]]],
    ['to nothing', { crew: 'c2', kind: 'mason' }, []],
  ])('%s', (_, filters, expected) => {
    expect(left(filters)).toEqual(expected);
  });

  it('works on the rows of crews as well', () => {
    const rows = narrowed(rowsByCrew(board), board, { ...NO_FILTERS, search: 'larch' });
    expect(rows.map(({ id, phases }) => [id, phases.length])).toEqual([
      ['c1', 1],
      ['c2', 1],
      ['none', 1],
    ]);
  });

  it('names the kinds there are, waits last', () => {
    expect(kindsOf(board)).toEqual(['labour', 'mason', 'wait']);
  });
});
