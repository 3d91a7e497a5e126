import { expect, test } from '@jest/globals';
import { CompiledCalendar } from './compiled-calendar.js';
import { CrewTimeline } from './crew-timeline.js';
import { slot } from './slot.js';
import { workdays } from './spec-input.js';

const timeline = (): CrewTimeline => new CrewTimeline(CompiledCalendar.of(workdays(9)));

test('gaps without enough working time are passed over, whatever the clock says', () => {
  const crew = timeline();
  crew.take(slot(28), slot(58), 1);
  crew.take(slot(96 + 28), slot(96 + 50), 2);
  const working = { slots: 3, working: true };
  expect(crew.blockedUntil(slot(28), slot(31), working)).toMatchObject({ owner: 2, to: 96 + 50 });
  expect(crew.blockedUntil(slot(28), slot(31), { slots: 2, working: true })).toMatchObject({
    owner: 1,
    to: 58,
  });
  expect(crew.blockedUntil(slot(28), slot(31), { slots: 60, working: false })).toMatchObject({
    owner: 1,
    to: 58,
  });
  expect(crew.blockedUntil(slot(58), slot(60), working)).toBeUndefined();
});

test('a crew taken twice by facts keeps both, without overlap, and names the first', () => {
  const crew = timeline();
  expect(crew.take(slot(10), slot(20), 1)).toBeUndefined();
  expect(crew.take(slot(30), slot(40), 2)).toBeUndefined();
  expect(crew.take(slot(5), slot(50), 3)).toBe(1);
  const owners = [5, 10, 20, 30, 40].map((t) => crew.firstIn(slot(t), slot(t + 1))?.owner);
  expect(owners).toEqual([3, 1, 3, 2, 3]);
  crew.release(3);
  expect(crew.firstIn(slot(20), slot(30))).toBeUndefined();
  expect(crew.firstIn(slot(5), slot(50))?.owner).toBe(1);
});
