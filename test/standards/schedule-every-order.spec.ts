import { expect, test } from '@jest/globals';
import { improve } from '../../shared/schedule/improve/improve.js';
import { objectiveBound } from '../../shared/schedule/improve/objective-bound.js';
import { DEFAULT_WEIGHTS } from '../../shared/schedule/improve/objective.js';
import { EveryOrder } from './every-order.js';
import { smallCase, totalOf } from './small-case.js';

test('the search finds the best of every order, placed slot by slot by an independent judge, on 1,000 small cases', () => {
  const missed: object[] = [];
  let orders = 0;
  for (let seed = 1; seed <= 1000; seed++) {
    const input = smallCase(seed);
    const judged = new EveryOrder(input).best((dates) => totalOf(input, dates));
    orders += judged.orders;
    const { after } = improve(input, { seed, schedules: 5040 });
    if (after.total !== judged.least)
      missed.push({ seed, least: judged.least, found: after.total, orders: judged.orders });
  }
  expect(missed).toEqual([]);
  expect(orders).toBeGreaterThan(10_000);
});

test('no order beats the bound, leads in working time and crews of different hours among them, on 1,500 small cases', () => {
  const beaten: object[] = [];
  let met = 0;
  for (let seed = 1; seed <= 1500; seed++) {
    const input = smallCase(seed, { leads: true });
    const { least } = new EveryOrder(input).best((dates) => totalOf(input, dates));
    const bound = objectiveBound(input, DEFAULT_WEIGHTS);
    if (bound > least) beaten.push({ seed, bound, least });
    if (bound === least) met++;
  }
  expect(beaten).toEqual([]);
  // It says something: now and then the best order reaches it.
  expect(met).toBeGreaterThan(100);
});
