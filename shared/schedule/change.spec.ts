import { describe, expect, test } from '@jest/globals';
import { applyChanges, type Change } from './change.js';
import type { Phase, PlanInput } from './model.js';
import { plan } from './plan.js';
import { slot } from './slot.js';
import { inputWith, link, work, workdays } from './spec-input.js';

const other = { id: 'others', trades: ['mason', 'labour'], calendarId: 'workdays' };
const input = inputWith({
  crews: [{ id: 'masons', trades: ['mason'], calendarId: 'workdays' }, other],
  calendars: [
    { id: 'workdays', open: workdays(2) },
    { id: 'visits', open: workdays(1) },
  ],
  weather: [{ id: 'site', holds: [] }],
  pools: [{ id: 'blankets', quantity: 2 }],
  phases: [
    work('dig', 8),
    work('begun', 8, { facts: { actualStart: slot(0), remaining: 3, crewId: 'others' } }),
    work('done', 8, { facts: { actualStart: slot(0), actualFinish: slot(4) } }),
    work('bound', 8, { crewId: 'others' }),
    { id: 'own', jobId: 'job', crewId: 'others', duration: { kind: 'work', slots: 2, mode: 'continuous' } },
  ],
  links: [link('dig', 'bound')],
});

const after = (...changes: Change[]): PlanInput => applyChanges(input, changes);
const phaseOf = (id: string, given: PlanInput): Phase => given.phases.find((phase) => phase.id === id)!;

test('records with a known id are replaced where they stand, others are added', () => {
  const pool = { id: 'blankets', quantity: 5 };
  expect(after({ kind: 'pool', pool }).pools).toEqual([pool]);
  expect(after({ kind: 'pool', pool: { ...pool, id: 'heaters' } }).pools).toHaveLength(2);
  const job = { id: 'job', priority: 4 };
  expect(after({ kind: 'job', job }).jobs).toEqual([job]);
  const crew = { ...other, trades: ['labour'] };
  expect(after({ kind: 'crew', crew }).crews[1]).toBe(crew);
  const set = { id: 'site', holds: [{ from: slot(1), to: slot(2), cause: { kind: 'unknown' as const } }] };
  expect(after({ kind: 'weather', set }).weather).toEqual([set]);
  const calendar = { id: 'visits', open: workdays(3) };
  expect(after({ kind: 'calendar', calendar }).calendars[1]).toBe(calendar);
  const phase = work('dig', 9);
  expect(after({ kind: 'phase', phase }).phases[0]).toBe(phase);
  const next = link('dig', 'own');
  expect(after({ kind: 'link', link: next }).links).toEqual([...input.links, next]);
  expect(after({ kind: 'withoutLink', linkId: link('dig', 'bound').id }).links).toEqual([]);
});

test('the given input is never changed, and changes follow one another', () => {
  const before = JSON.stringify(input);
  const twice = after(
    { kind: 'delay', phaseId: 'dig', slots: 4 },
    { kind: 'delay', phaseId: 'dig', slots: 1 },
  );
  expect(phaseOf('dig', twice).duration.slots).toBe(13);
  expect(JSON.stringify(input)).toBe(before);
});

describe('a delay', () => {
  test('makes what is left of begun work longer, and its length', () => {
    const phase = phaseOf('begun', after({ kind: 'delay', phaseId: 'begun', slots: 2 }));
    expect([phase.duration.slots, phase.facts?.remaining]).toEqual([10, 5]);
  });

  test('never makes work less than nothing, and leaves what is finished', () => {
    expect(phaseOf('dig', after({ kind: 'delay', phaseId: 'dig', slots: -20 })).duration.slots).toBe(0);
    expect(phaseOf('done', after({ kind: 'delay', phaseId: 'done', slots: 5 }))).toBe(phaseOf('done', input));
  });
});

test('without a crew its phases go to its trade, and what it has begun to another', () => {
  const without = after({ kind: 'withoutCrew', crewId: 'others' });
  expect(without.crews.map(({ id }) => id)).toEqual(['masons']);
  expect(phaseOf('bound', without)).toMatchObject({ trade: 'mason' });
  expect(phaseOf('bound', without).crewId).toBeUndefined();
  expect(phaseOf('own', without)).toMatchObject({ trade: 'mason' });
  expect(phaseOf('begun', without).facts).toMatchObject({ actualStart: 0, remaining: 3 });
  expect(phaseOf('begun', without).facts?.crewId).toBeUndefined();
  expect(phaseOf('dig', without)).toBe(phaseOf('dig', input));
});

test('a crew without a trade leaves its phases to nobody, and the plan names the crew that is gone', () => {
  const helpers = { id: 'helpers', trades: [], calendarId: 'workdays' };
  const given = inputWith({
    crews: [...input.crews, helpers],
    phases: [work('carry', 4, { trade: undefined, crewId: 'helpers' })],
  });
  const without = applyChanges(given, [{ kind: 'withoutCrew', crewId: 'helpers' }]);
  expect(plan(given).conflicts).toEqual([]);
  expect(plan(without).conflicts).toEqual([{ code: 'crewMissing', phaseId: 'carry', trade: 'helpers' }]);
});

describe('a closed stretch', () => {
  const lost = { kind: 'closed', from: slot(96), to: slot(192) } as const;

  test('closes every calendar, or the named one', () => {
    expect(after(lost).calendars.map(({ open }) => open)).toEqual([workdays(1), workdays(1)]);
    const one = after({ ...lost, from: slot(0), calendarId: 'visits' });
    expect(one.calendars.map(({ open }) => open)).toEqual([workdays(2), []]);
  });
});

test.each<[Change, string]>([
  [{ kind: 'delay', phaseId: 'x', slots: 1 }, 'There is no phase "x" to change'],
  [{ kind: 'withoutCrew', crewId: 'x' }, 'There is no crew "x" to change'],
  [{ kind: 'withoutLink', linkId: 'x' }, 'There is no link "x" to change'],
  [{ kind: 'closed', calendarId: 'x', from: slot(0), to: slot(1) }, 'There is no calendar "x" to change'],
])('an id that is not in the input is named: %j', (change, message) => {
  expect(() => applyChanges(input, [change])).toThrow(message);
  expect(() => applyChanges(input, [change])).toThrow(RangeError);
});
