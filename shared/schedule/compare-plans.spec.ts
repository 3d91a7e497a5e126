import { expect, test } from '@jest/globals';
import { comparePlans } from './compare-plans.js';
import type { Commitment } from './model.js';
import { plan } from './plan.js';
import { slot } from './slot.js';
import { inputWith, work } from './spec-input.js';

const made = plan(
  inputWith({
    now: slot(40),
    phases: [
      work('dig', 8, { facts: { actualStart: slot(28), actualFinish: slot(38), crewId: 'masons' } }),
      work('lay', 8),
      work('seal', 4),
    ],
  }),
);
const at = (start: number, finish: number, crewId?: string): Commitment => ({
  start: slot(start),
  finish: slot(finish),
  ...(crewId === undefined ? {} : { crewId }),
});

test('what stands where it was promised does not differ, history never', () => {
  const same = comparePlans(made, { dig: at(30, 34), lay: at(40, 48), seal: at(48, 52, 'masons') });
  expect(same).toEqual({ phases: [], jobs: [] });
});

test('dates and crews before and after, and the job finish', () => {
  const changed = comparePlans(made, { lay: at(40, 48, 'others'), seal: at(50, 60) });
  expect(changed).toEqual({
    phases: [
      {
        phaseId: 'lay',
        jobId: 'job',
        before: { start: 40, finish: 48, crewId: 'others' },
        after: { start: 40, finish: 48, crewId: 'masons' },
      },
      {
        phaseId: 'seal',
        jobId: 'job',
        before: { start: 50, finish: 60, crewId: null },
        after: { start: 48, finish: 52, crewId: 'masons' },
      },
    ],
    jobs: [{ jobId: 'job', before: 60, after: 52 }],
  });
});

test('a phase nothing was promised about is new', () => {
  const fresh = comparePlans(made, {});
  expect(fresh.phases.map(({ phaseId, before }) => [phaseId, before])).toEqual([
    ['lay', null],
    ['seal', null],
  ]);
  expect(fresh.jobs).toEqual([{ jobId: 'job', before: 38, after: 52 }]);
});

test('a job of which nobody has been told anything has no finish before', () => {
  const only = plan(inputWith({ phases: [work('lay', 8)] }));
  expect(comparePlans(only, {}).jobs).toEqual([{ jobId: 'job', before: null, after: 36 }]);
});

test('a phase that has lost its place differs from what was promised, and so does its job', () => {
  const lost = plan(inputWith({ phases: [work('wire', 8, { trade: 'electrician' })] }));
  expect(comparePlans(lost, { wire: at(40, 48) })).toEqual({
    phases: [
      {
        phaseId: 'wire',
        jobId: 'job',
        before: { start: 40, finish: 48, crewId: null },
        after: { start: null, finish: null, crewId: null },
      },
    ],
    jobs: [{ jobId: 'job', before: 48, after: null }],
  });
});
