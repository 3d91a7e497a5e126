import { expect, test } from '@jest/globals';
import type { PlannedPhase } from '../model.js';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { inputWith, work } from '../spec-input.js';
import { faults, withPhase } from './broken-plan.js';

/* The second phase waits for the morning and then for the crew. */
const input = inputWith({ phases: [work('a', 8), work('b', 4)] });
const sound = plan(input);
const { trail, ready } = sound.phases[1]!;
const wrong = 'dates b: its waits do not add up to its start';
const found = (change: Partial<PlannedPhase>): string[] => faults(input, withPhase(sound, 'b', change));

test('the plan itself adds up', () => {
  expect(trail.map(({ from, to }) => [from, to])).toEqual([
    [0, 28],
    [28, 36],
  ]);
  expect(faults(input, sound)).toEqual([]);
});

test('waits that begin nowhere are found out', () => {
  expect(ready).toBe(0);
  expect(found({ ready: null })).toEqual([wrong]);
});

test('a wait that does not begin where the one before it ends is found out', () => {
  expect(found({ trail: [trail[0]!, { ...trail[1]!, from: slot(30) }] })).toEqual([wrong]);
});

test('a wait of no length is found out, though the sum is right', () => {
  const nothing = { ...trail[0]!, from: slot(28), to: slot(28) };
  expect(found({ trail: [trail[0]!, nothing, trail[1]!] })).toEqual([wrong]);
});

test('a job that is called complete though a phase has no place is found out', () => {
  const half = inputWith({ phases: [work('a', 8), work('wire', 4, { trade: 'electrician' })] });
  const made = plan(half);
  expect(faults(half, made)).toEqual([]);
  const boast = { ...made, jobs: made.jobs.map((job) => ({ ...job, complete: true })) };
  expect(faults(half, boast)).toEqual(['dates job: does not finish with its last phase']);
});
