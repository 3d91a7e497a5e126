import { describe, expect, test } from '@jest/globals';
import type { Change } from '../change.js';
import { Planner } from '../planner.js';
import { slot } from '../slot.js';
import { cure, inputWith, link, work } from '../spec-input.js';
import { verify } from '../verify/verify.js';
import { delay, droppedProtection, extraCrew, lostDay } from './scenarios.js';
import { whatIf } from './what-if.js';

// Two jobs with one mason crew: each a day of work, the first with a cure under blankets before its second phase.
const input = inputWith({
  jobs: [
    { id: 'a', priority: 0, due: slot(96 * 4) },
    { id: 'b', priority: 1 },
  ],
  pools: [{ id: 'blankets', quantity: 1 }],
  phases: [
    work('a1', 32, { jobId: 'a', holds: [{ poolId: 'blankets', quantity: 1, untilPhaseId: 'a2' }] }),
    cure('a2', 96, { jobId: 'a' }),
    work('a3', 32, { jobId: 'a' }),
    work('b1', 32, { jobId: 'b' }),
  ],
  links: [link('a1', 'a2'), link('a2', 'a3')],
});
const day = (d: number, from = 28): number => d * 96 + from;
const planner = Planner.of(input);
const ask = (changes: readonly Change[]) => whatIf(planner, changes);

describe('what if', () => {
  test('nothing changes: every job is listed, none has moved', () => {
    const { jobs, phases, conflicts } = ask([]);
    expect(jobs).toEqual([
      {
        jobId: 'a',
        finishBefore: day(2, 60),
        finishAfter: day(2, 60),
        shift: 0,
        dueMissedBefore: false,
        dueMissedAfter: false,
      },
      {
        jobId: 'b',
        finishBefore: day(1, 60),
        finishAfter: day(1, 60),
        shift: 0,
        dueMissedBefore: false,
        dueMissedAfter: false,
      },
    ]);
    expect([phases, conflicts]).toEqual([[], { added: [], removed: [] }]);
  });

  test('a phase takes longer: the job that waits behind it for the crew moves as well', () => {
    const { jobs, phases, plan } = ask(delay('a1', 32));
    expect(jobs.map(({ jobId, shift }) => [jobId, shift])).toEqual([
      ['a', 96],
      ['b', 96],
    ]);
    expect(phases.map(({ phaseId }) => phaseId)).toEqual(['a1', 'a2', 'a3', 'b1']);
    expect(phases[0]).toEqual({
      phaseId: 'a1',
      jobId: 'a',
      before: { start: 28, finish: 60, crewId: 'masons' },
      after: { start: 28, finish: day(1, 60), crewId: 'masons' },
    });
    expect(verify(planner.input, planner.plan)).toEqual([]);
    expect(plan.phases[0]!.finish).toBe(day(1, 60));
    expect(planner.plan.phases[0]!.finish).toBe(60);
  });

  test('there is another crew: what only waited for hands comes forward', () => {
    const { jobs, phases } = ask(extraCrew(input, 'masons'));
    expect(jobs.map(({ shift }) => shift)).toEqual([0, -96]);
    expect(phases.map(({ phaseId, after }) => [phaseId, after.crewId])).toEqual([['b1', 'masons 2']]);
  });

  test('a day is lost: whoever worked then works later, and a promise may break', () => {
    const { jobs, conflicts } = ask(lostDay(slot(day(0, 0)), slot(day(3, 0))));
    expect(jobs).toMatchObject([
      { jobId: 'a', shift: 3 * 96, dueMissedBefore: false, dueMissedAfter: true },
      { jobId: 'b', shift: 3 * 96 },
    ]);
    expect(conflicts).toEqual({
      added: [{ code: 'dueMissed', jobId: 'a', due: 96 * 4, finish: day(5, 60) }],
      removed: [],
    });
    expect(ask(lostDay(slot(day(0, 0)), slot(day(1, 0)), 'workdays')).jobs.map(({ shift }) => shift)).toEqual(
      [96, 96],
    );
  });

  test('protection is dropped: its equipment is free, and the weather it kept off holds the phase up', () => {
    const frost = {
      from: slot(0),
      to: slot(day(1, 0)),
      cause: { kind: 'limit', limitId: 'air', value: 20, hour: slot(4), text: 'below 40 °F' },
    } as const;
    const changes = droppedProtection(input, 'a1', ['blankets'], [frost]);
    const { jobs, plan } = ask(changes);
    expect(jobs.map(({ shift }) => shift)).toEqual([96, -96]);
    expect(plan.phases[0]).toMatchObject({ start: day(1), reason: { kind: 'weather', cause: frost.cause } });
    expect(changes[1]).toMatchObject({ kind: 'phase', phase: { holds: [] } });
  });

  test('a phase is added or a job without a place comes into one', () => {
    const added = ask([{ kind: 'phase', phase: work('b2', 4, { jobId: 'b' }) }]);
    expect(added.phases).toMatchObject([{ phaseId: 'b2', before: null, after: { start: day(3) } }]);
    const short = Planner.of(inputWith({ phases: [work('x', 4, { trade: 'cable' })] }));
    const crew = { id: 'c', trades: ['cable'], calendarId: 'workdays' };
    const placed = whatIf(short, [{ kind: 'crew', crew }]);
    expect(placed.jobs).toEqual([
      {
        jobId: 'job',
        finishBefore: null,
        finishAfter: 32,
        shift: null,
        dueMissedBefore: false,
        dueMissedAfter: false,
      },
    ]);
    expect(placed.conflicts.removed).toEqual([{ code: 'crewMissing', phaseId: 'x', trade: 'cable' }]);
  });

  test('a phase that takes no equipment goes without protection: only the weather comes over it', () => {
    const frost = { kind: 'called', holdId: 'frost', text: 'called by the foreman' } as const;
    const holds = [{ from: slot(0), to: slot(day(9)), cause: frost }];
    const changes = droppedProtection(input, 'b1', ['blankets'], holds);
    expect(changes.map(({ kind }) => kind)).toEqual(['weather', 'phase']);
    expect(ask(changes).jobs.map(({ jobId, finishAfter }) => [jobId, finishAfter])).toEqual([
      ['a', day(2, 60)],
      ['b', day(9, 60)],
    ]);
  });

  test('something is named that is not there: it says so', () => {
    expect(() => ask(delay('nobody', 1))).toThrow('There is no phase "nobody"');
    expect(() => extraCrew(input, 'nobody')).toThrow('There is no crew "nobody" to take as a model');
    expect(() => droppedProtection(input, 'nobody', [], [])).toThrow(
      'There is no phase "nobody" to leave unprotected',
    );
    const twice = { ...input, crews: [...input.crews, { ...input.crews[0]!, id: 'masons 2' }] };
    expect(extraCrew(twice, 'masons')).toMatchObject([{ crew: { id: 'masons 3' } }]);
  });
});
