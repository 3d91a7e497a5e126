import { describe, expect, it } from '@jest/globals';
import type { PlanInput } from './model.js';
import { plan } from './plan.js';
import { inputWith, link, work } from './spec-input.js';

/* One mason crew, three jobs of one phase each: whoever is ranked first is served first. */
const three = (part: Partial<PlanInput> = {}): PlanInput =>
  inputWith({
    jobs: [1, 2, 3].map((n) => ({ id: `job${n}`, priority: n })),
    phases: [1, 2, 3].map((n) => work(`p${n}`, 8, { jobId: `job${n}` })),
    ...part,
  });

const served = (input: PlanInput): string[] =>
  [...plan(input).phases].sort((a, b) => (a.start ?? 0) - (b.start ?? 0)).map(({ id }) => id);

const aheadOf = (input: PlanInput, id: string): string | null => {
  const reason = plan(input).phases.find((phase) => phase.id === id)?.reason;
  return reason?.kind === 'crew' ? `${reason.phaseId} by ${reason.ahead}` : null;
};

describe('the order of an improved plan', () => {
  it('replaces the priority of jobs', () => {
    expect(served(three())).toEqual(['p1', 'p2', 'p3']);
    expect(served(three({ order: ['p3', 'p1', 'p2'] }))).toEqual(['p3', 'p1', 'p2']);
  });

  it('is named as the rule by which another goes first', () => {
    expect(aheadOf(three(), 'p2')).toBe('p1 by priority');
    expect(aheadOf(three({ order: ['p3', 'p1', 'p2'] }), 'p1')).toBe('p3 by order');
  });

  it('puts phases that it does not name behind those it names, by the usual rule', () => {
    expect(served(three({ order: ['p3'] }))).toEqual(['p3', 'p1', 'p2']);
    expect(aheadOf(three({ order: ['p3'] }), 'p2')).toBe('p1 by priority');
  });

  it('does not move what a person has fixed', () => {
    const phases = three().phases.map((phase) =>
      phase.id === 'p2' ? { ...phase, facts: { pinnedStart: 28 as never } } : phase,
    );
    expect(served(three({ phases, order: ['p3', 'p1', 'p2'] }))).toEqual(['p2', 'p3', 'p1']);
  });
});

describe('a crew that has no open hours', () => {
  const input = three({
    calendars: [...three().calendars, { id: 'away', open: [] }],
    crews: [...three().crews, { id: 'abroad', trades: ['setter'], calendarId: 'away' }],
    phases: [...three().phases, work('set', 8, { jobId: 'job1', trade: 'setter' })],
  });

  it('leaves its work without a place and the others in their turn', () => {
    const made = plan(input);
    expect(made.conflicts).toMatchObject([{ code: 'beyondHorizon', phaseId: 'set' }]);
    expect(made.phases.filter(({ start }) => start !== null).map(({ id, start }) => [id, start])).toEqual([
      ['p1', 28],
      ['p2', 36],
      ['p3', 44],
    ]);
  });

  it('gives what leads to its work the longer way to the end, no more than that', () => {
    const jobs = [1, 2, 3].map((n) => ({ id: `job${n}`, priority: 0 }));
    const links = [link('p3', 'set')];
    expect(served({ ...input, jobs, links }).filter((id) => id !== 'set')).toEqual(['p3', 'p1', 'p2']);
    const urgent = jobs.map((job) => (job.id === 'job2' ? { ...job, priority: -1 } : job));
    expect(served({ ...input, jobs: urgent, links }).filter((id) => id !== 'set')).toEqual([
      'p2',
      'p3',
      'p1',
    ]);
  });
});
