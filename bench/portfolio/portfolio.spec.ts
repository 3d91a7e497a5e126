import { expect, test } from '@jest/globals';
import type { PlanInput } from '../../shared/schedule/model.js';
import { plan } from '../../shared/schedule/plan.js';
import { portfolio } from './portfolio.js';

/** Share of the masons' open hours in which they work, between two slots. */
function busyShare(input: PlanInput, since: number, until: number): number {
  const masons = new Set(input.crews.filter(({ trades }) => trades.includes('mason')).map(({ id }) => id));
  const inside = (list: readonly { from: number; to: number }[]): number =>
    list.reduce((sum, { from, to }) => sum + Math.max(0, Math.min(to, until) - Math.max(from, since)), 0);
  const worked = plan(input)
    .phases.filter(({ crewId }) => crewId !== null && masons.has(crewId))
    .reduce((sum, { segments }) => sum + inside(segments), 0);
  return worked / (inside(input.calendars[0]!.open) * masons.size);
}

function comings(input: PlanInput): number[] {
  return input.phases.flatMap(({ gates = [] }) =>
    gates.flatMap((gate) => (gate.kind === 'notBefore' ? [gate.at] : [])),
  );
}

test('jobs that come in one after the other keep the masons about 80 % busy once the first are under way', () => {
  const input = portfolio(100, { staggered: true });
  const at = comings(input);
  expect(at).toHaveLength(100);
  const last = Math.max(...at);
  const share = busyShare(input, last / 4, last);
  expect(share).toBeGreaterThan(0.75);
  expect(share).toBeLessThan(0.85);
});

test('the first phase of a job waits for the day it comes in, and all else is as it was', () => {
  const plain = portfolio(8);
  const staggered = portfolio(8, { staggered: true });
  const gates = staggered.phases.filter((phase) => phase.gates !== undefined);
  expect(gates.map(({ id }) => id)).toEqual(Array.from({ length: 8 }, (_, j) => `${j}-00`));
  expect({ ...staggered, phases: staggered.phases.map(({ gates: _gates, ...phase }) => phase) }).toEqual(
    plain,
  );
  const starts = new Map(plan(staggered).phases.map(({ id, start }) => [id, start!]));
  comings(staggered).forEach((at, j) => expect(starts.get(`${j}-00`)).toBeGreaterThanOrEqual(at));
});

test('without the option all jobs are there from the start', () => {
  expect(comings(portfolio(8))).toEqual([]);
});
