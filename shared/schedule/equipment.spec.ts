import { expect, test } from '@jest/globals';
import { plan } from './plan.js';
import { cure, inputWith, link, pour } from './spec-input.js';
import { verify } from './verify/verify.js';

test('of two kinds of equipment each comes back when it is let go: the one with the pour, the other with the cure', () => {
  const crews = ['a', 'b', 'c'].map((id) => ({ id, trades: ['mason'], calendarId: 'workdays' }));
  const input = inputWith({
    crews,
    jobs: [
      { id: 'job', priority: 0 },
      { id: 'later', priority: 1 },
    ],
    pools: [
      { id: 'blankets', quantity: 1 },
      { id: 'mixer', quantity: 1 },
    ],
    phases: [
      pour('pour', 8, {
        crewId: 'a',
        holds: [
          { poolId: 'mixer', quantity: 1 },
          { poolId: 'blankets', quantity: 1, untilPhaseId: 'cure' },
        ],
      }),
      cure('cure', 96),
      pour('mixed', 4, { crewId: 'b', jobId: 'later', holds: [{ poolId: 'mixer', quantity: 1 }] }),
      pour('covered', 4, { crewId: 'c', jobId: 'later', holds: [{ poolId: 'blankets', quantity: 1 }] }),
    ],
    links: [link('pour', 'cure')],
  });
  const made = plan(input);
  expect(verify(input, made)).toEqual([]);
  const at = (id: string) => made.phases.find((phase) => phase.id === id)!;
  expect(at('cure').finish).toBe(36 + 96);
  expect(at('mixed')).toMatchObject({ start: 36, reason: { kind: 'equipment', releasedBy: null } });
  expect(at('covered')).toMatchObject({ start: 36 + 96, reason: { kind: 'equipment', releasedBy: 'cure' } });
});
