import { describe, expect, test } from '@jest/globals';
import type { PlanInput, Reason } from './model.js';
import { Pass } from './pass.js';
import { slot } from './slot.js';
import { inputWith, link, pour, work } from './spec-input.js';

/** The reason of a phase and all that binds it beside that, by kind and name. */
function bindings(input: PlanInput, id: string): string[] {
  const pass = new Pass(input);
  const { reason } = pass.plan.phases.find((phase) => phase.id === id)!;
  return [reason, ...(pass.ties().get(id) ?? [])].map(nameOf);
}

function nameOf(reason: Reason): string {
  switch (reason.kind) {
    case 'inspection':
      return `inspection ${reason.inspectionId}`;
    case 'notBefore':
    case 'clearance':
      return `${reason.kind} ${reason.id}`;
    case 'link':
      return `link ${reason.phaseId}`;
    default:
      return reason.kind;
  }
}

const visit = (id: string) =>
  ({
    id,
    jobId: 'job',
    after: ['form'],
    notice: 0,
    noticeIn: 'elapsed',
    calendarId: 'workdays',
    visit: 4,
    state: { kind: 'open' },
  }) as const;
const gate = (inspectionId: string) => ({ kind: 'inspection', inspectionId }) as const;
const hold = (id: string, at: number) =>
  ({ kind: 'notBefore', id, at: slot(at), cause: 'holdPoint' }) as const;
const inspected = (gates: Parameters<typeof pour>[2]) =>
  inputWith({
    inspections: [visit('footing'), visit('mesh')],
    phases: [work('form', 8), pour('pour', 4, gates)],
    links: [link('form', 'pour')],
  });

describe('what binds a phase at the instant at which its reason does', () => {
  test('is listed when two visits and a hold point end together', () => {
    const input = inspected({ gates: [gate('mesh'), gate('footing'), hold('hold', 40)] });
    expect(bindings(input, 'pour')).toEqual(['inspection footing', 'inspection mesh', 'notBefore hold']);
  });

  test('is the reason alone when the other has ended before', () => {
    const input = inspected({ gates: [gate('footing'), hold('hold', 39)] });
    expect(bindings(input, 'pour')).toEqual(['inspection footing']);
  });

  test('is not asked of what a person has fixed, though a link binds there too', () => {
    const phases = [work('a', 8), work('b', 4, { gates: [hold('hold', 36)] })];
    const input = inputWith({ phases, links: [link('a', 'b')] });
    expect(bindings(input, 'b')).toEqual(['link a', 'notBefore hold', 'crew']);
    const [a, b] = phases;
    const pinned = { ...b!, facts: { pinnedStart: slot(36) } };
    expect(bindings({ ...input, phases: [a!, pinned] }, 'b')).toEqual(['link a']);
    const promised = { ...b!, commitment: { start: slot(36), finish: slot(40) } };
    expect(bindings({ ...input, freezeUntil: slot(96), phases: [a!, promised] }, 'b')).toEqual(['link a']);
  });

  test('is not asked of work under way', () => {
    const phases = [work('a', 8, { facts: { actualStart: slot(28) } })];
    const pass = new Pass(inputWith({ now: slot(30), phases }));
    expect(pass.ties().size).toBe(0);
  });
});

test('finding out what binds leaves the plan as it is', () => {
  const pass = new Pass(inspected({ gates: [gate('mesh'), gate('footing')] }));
  const before = JSON.stringify(pass.plan);
  expect(pass.ties().size).toBe(1);
  expect(JSON.stringify(pass.whole())).toBe(before);
});
