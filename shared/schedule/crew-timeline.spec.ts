import { expect, test } from '@jest/globals';
import { CompiledCalendar } from './compiled-calendar.js';
import { CrewTimeline } from './crew-timeline.js';
import { slot } from './slot.js';
import { workdays } from './spec-input.js';
import { View } from './view.js';

const timeline = (): CrewTimeline => new CrewTimeline(CompiledCalendar.of(workdays(9)), new View(50));

test('gaps without enough working time are passed over, whatever the clock says', () => {
  const crew = timeline();
  crew.take(slot(28), slot(58), 1);
  crew.take(slot(96 + 28), slot(96 + 50), 2);
  const until = (from: number, to: number, slots: number, working: boolean): number | undefined => {
    const i = crew.blockedBy(slot(from), slot(to), slots, working);
    return i < 0 ? undefined : crew.toOf(i);
  };
  expect(until(28, 31, 3, true)).toBe(96 + 50);
  expect(until(28, 31, 2, true)).toBe(58);
  expect(until(28, 31, 60, false)).toBe(58);
  expect(until(58, 60, 3, true)).toBeUndefined();
});

test('a crew taken twice by facts keeps both, without overlap, and names the first', () => {
  const crew = timeline();
  expect(crew.take(slot(10), slot(20), 1)).toBe(-1);
  expect(crew.take(slot(30), slot(40), 2)).toBe(-1);
  expect(crew.take(slot(5), slot(50), 3)).toBe(1);
  expect(crew.all()).toEqual([
    { from: 5, to: 10, owner: 3 },
    { from: 10, to: 20, owner: 1 },
    { from: 20, to: 30, owner: 3 },
    { from: 30, to: 40, owner: 2 },
    { from: 40, to: 50, owner: 3 },
  ]);
  crew.release(slot(5), slot(50), 3);
  expect(crew.firstIn(slot(20), slot(30))).toBe(-1);
  expect(crew.ownerOf(crew.firstIn(slot(5), slot(50)))).toBe(1);
});

test('work that lets its crew go meets only what lies outside the time it lets it go', () => {
  const crew = timeline();
  const hold = CompiledCalendar.of([{ from: slot(30), to: slot(40) }]);
  crew.take(slot(32), slot(38), 1);
  crew.take(slot(39), slot(44), 2);
  expect(crew.firstOutside(slot(28), slot(39), hold)).toBe(-1);
  expect(crew.ownerOf(crew.firstOutside(slot(28), slot(41), hold))).toBe(2);
});

test('more stretches than there was room for keep their order', () => {
  const crew = timeline();
  for (let i = 49; i >= 0; i--) crew.take(slot(10 * i), slot(10 * i + 5), i);
  expect(crew.all().map(({ owner }) => owner)).toEqual(Array.from({ length: 50 }, (_, i) => i));
});

test('what is not seen gives way, is named, and is not met by any question', () => {
  const view = new View(3);
  view.since.set([0, 1, 2]);
  const crew = new CrewTimeline(CompiledCalendar.of(workdays(9)), view);
  crew.take(slot(28), slot(40), 0);
  crew.take(slot(40), slot(50), 2);
  crew.take(slot(52), slot(56), 1);
  view.until = 2;
  expect(crew.firstIn(slot(41), slot(52))).toBe(-1);
  expect(crew.toOf(crew.blockedBy(slot(30), slot(33), 12, false))).toBe(40);
  expect(crew.toOf(crew.blockedBy(slot(30), slot(33), 13, false))).toBe(56);
  expect(crew.take(slot(48), slot(52), 1)).toBe(-1);
  expect([...view.ousted]).toEqual([2]);
  expect(crew.all().map(({ owner }) => owner)).toEqual([0, 1, 1]);
});

test('what is seen keeps its time though what is not seen gives way beside it', () => {
  const view = new View(3);
  view.since.set([0, 1, 2]);
  const crew = new CrewTimeline(CompiledCalendar.of(workdays(9)), view);
  crew.take(slot(28), slot(40), 0);
  crew.take(slot(40), slot(50), 2);
  view.until = 2;
  expect(crew.take(slot(36), slot(48), 1)).toBe(0);
  expect([...view.ousted]).toEqual([2]);
  expect(crew.all()).toEqual([
    { from: 28, to: 40, owner: 0 },
    { from: 40, to: 48, owner: 1 },
  ]);
});
