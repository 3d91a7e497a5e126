import { describe, expect, test } from '@jest/globals';
import type { Phase, Plan, PlanInput } from './model.js';
import { plan } from './plan.js';
import { slot } from './slot.js';
import { cure, inputWith, link, work } from './spec-input.js';
import { verify } from './verify/verify.js';

function planned(input: PlanInput): Plan {
  const made = plan(input);
  expect(verify(input, made)).toEqual([]);
  return made;
}

describe('whose crew does what has begun', () => {
  const begun = (part: Partial<Phase>, actualFinish?: number): string | null => {
    const facts = {
      actualStart: slot(28),
      ...(actualFinish === undefined ? {} : { actualFinish: slot(actualFinish) }),
    };
    const phases = [work('lay', 16, { facts, ...part })];
    return planned(inputWith({ now: slot(40), phases })).phases[0]!.crewId;
  };
  const promised = (crewId: string) => ({
    commitment: { start: slot(28), finish: slot(44), crewId },
  });

  test('the one it was promised with, where nobody has said which', () => {
    expect(begun(promised('masons'))).toBe('masons');
  });

  test('nobody, where that one is no longer there', () => {
    expect(begun(promised('gone'))).toBeNull();
  });

  test('the first that could, where nothing was promised; nobody for what is over', () => {
    expect(begun({})).toBe('masons');
    expect(begun({}, 36)).toBeNull();
    expect(begun({ trade: 'electrician' })).toBeNull();
  });
});

describe('work under way', () => {
  const horizon = 96 * 2;
  const facts = { actualStart: slot(28), crewId: 'masons' };

  test('that outruns the horizon ends with it and says so', () => {
    const made = planned(inputWith({ horizon, now: slot(40), phases: [work('lay', 90, { facts })] }));
    expect(made.phases).toMatchObject([{ state: 'started', start: 28, finish: horizon }]);
    expect(made.conflicts).toEqual([{ code: 'beyondHorizon', phaseId: 'lay', cause: { kind: 'actual' } }]);
  });

  test('likewise a cure by the clock, and one held open by a lag beyond the calendar', () => {
    const long = cure('cure', 300, { facts: { actualStart: slot(28) } });
    const waits = planned(inputWith({ horizon, now: slot(40), phases: [long] }));
    expect(waits.phases).toMatchObject([{ state: 'started', finish: horizon }]);
    expect(waits.conflicts).toMatchObject([{ code: 'beyondHorizon', phaseId: 'cure' }]);
    const held = planned(
      inputWith({
        horizon,
        now: slot(40),
        phases: [
          work('dig', 4, { facts: { actualStart: slot(28), actualFinish: slot(32) } }),
          work('lay', 16, { facts }),
        ],
        links: [link('dig', 'lay', 'FF', 200, 'working')],
      }),
    );
    expect(held.conflicts).toMatchObject([{ code: 'beyondHorizon', phaseId: 'lay' }]);
  });

  test('is never over before the present, though nothing of it is left', () => {
    const made = planned(
      inputWith({ now: slot(40), phases: [cure('cure', 4, { facts: { actualStart: slot(28) } })] }),
    );
    expect(made.phases).toMatchObject([{ start: 28, finish: 40 }]);
  });

  test('goes on when what it must outlast is over', () => {
    const made = planned(
      inputWith({
        now: slot(30),
        phases: [
          cure('cure', 20, { facts: { actualStart: slot(28) } }),
          work('lay', 4, { facts: { ...facts, remaining: 2 } }),
        ],
        links: [link('cure', 'lay', 'FF', 6)],
      }),
    );
    expect(made.phases[1]).toMatchObject({ id: 'lay', finish: 54 });
  });
});
