import { expect, test } from '@jest/globals';
import type { PlanInput } from './model.js';
import { plan } from './plan.js';
import { cure, inputWith, link } from './spec-input.js';
import { verify } from './verify/verify.js';

/*
 * A line of cures, each of a day, named so that the order of ids runs against the order of work, and a greatest lag from the first to the
 * last. Times are of the clock: a day is 96 slots.
 */
const PHASES = 60;
const name = (place: number): string => `c${String(PHASES - place).padStart(2, '0')}`;
const line = (mostLag: number): PlanInput =>
  inputWith({
    horizon: 96 * (PHASES + 30),
    calendars: [],
    crews: [],
    phases: Array.from({ length: PHASES }, (_, i) => cure(name(i), 96)),
    links: [
      ...Array.from({ length: PHASES - 1 }, (_, i) => link(name(i), name(i + 1))),
      { ...link(name(0), name(PHASES - 1), 'SS'), mostLag },
    ],
  });

test('a long line that just keeps its greatest lag is not taken for one that cannot', () => {
  const input = line(96 * (PHASES - 1));
  const made = plan(input);
  expect(made.conflicts).toEqual([]);
  expect(verify(input, made)).toEqual([]);
});

test('a slot less cannot be kept by any plan: the circle names all of it, and by how much', () => {
  const made = plan(line(96 * (PHASES - 1) - 1));
  const circles = made.conflicts.filter((conflict) => conflict.code === 'lagCycle');
  expect(circles).toMatchObject([{ by: 1 }]);
  expect(circles[0]!.phaseIds).toHaveLength(PHASES);
  expect(made.conflicts.filter(({ code }) => code === 'lagExceeded')).toMatchObject([{ by: 1 }]);
});
