import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { explain } from '../../shared/schedule/explain.js';
import type { PlanInput } from '../../shared/schedule/model.js';
import { plan } from '../../shared/schedule/plan.js';
import { slot } from '../../shared/schedule/slot.js';
import { verify } from '../../shared/schedule/verify/verify.js';
import { arbitraryInput, shuffled } from './schedule-arbitrary-input.js';

const tame = arbitraryInput({ cycles: false, facts: false });
const lived = arbitraryInput({ cycles: false, facts: true });
const wild = arbitraryInput({ cycles: true, facts: true });

/** fast-check prints the seed and the shrunken input of a failure; set FC_SEED to replay it. */
const seed = process.env['FC_SEED'];
const runs = (numRuns: number) => ({ numRuns, ...(seed === undefined ? {} : { seed: Number(seed) }) });

describe.each([
  ['without facts', tame],
  ['with facts, pins and commitments', lived],
  ['with cycles as well', wild],
])('any input %s', (_name, inputs) => {
  test('the independent checker finds nothing', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        expect(verify(input, plan(input))).toEqual([]);
      }),
      runs(1500),
    );
  });

  test('gives the same plan, byte for byte, in whatever order its lists come', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const first = JSON.stringify(plan(input));
        expect(JSON.stringify(plan(input))).toBe(first);
        expect(JSON.stringify(plan(shuffled(input)))).toBe(first);
      }),
      runs(400),
    );
  });

  test('every reason leads back to the present, to a fact or to a date from outside', () => {
    const ends = ['now', 'actual', 'clearance', 'cure', 'notBefore', 'pin', 'commitment', 'unplanned'];
    const visitEnds = ['notice', 'hours', 'booked', 'passed'];
    fc.assert(
      fc.property(inputs, (input) => {
        const made = plan(input);
        for (const phase of made.phases) {
          const chain = explain(made, phase.id);
          const last = chain.at(-1)!;
          expect(last.inspectionId === null ? ends : [...visitEnds, 'unplanned']).toContain(last.reason.kind);
          expect(chain[0]!.reason).toEqual(phase.reason);
        }
      }),
      runs(400),
    );
  });
});

test('no phase has less free float than none or more than its total float', () => {
  fc.assert(
    fc.property(tame, (input) => {
      for (const { totalFloat, freeFloat } of plan(input).phases) {
        if (totalFloat === null || freeFloat === null) continue;
        expect(freeFloat).toBeGreaterThanOrEqual(0);
        expect(totalFloat).toBeGreaterThanOrEqual(freeFloat);
      }
    }),
    runs(1000),
  );
});

test('a plan that is committed and planned again stays where it is, frozen or not', () => {
  fc.assert(
    fc.property(tame, fc.integer({ min: 0, max: 600 }), (input, freeze) => {
      const first = plan(input);
      const again = plan(committed(input, freeze));
      expect(again.conflicts.filter(({ code }) => code === 'commitmentBroken')).toEqual([]);
      for (const phase of first.phases) {
        const { start, finish } = again.phases.find(({ id }) => id === phase.id)!;
        if (phase.start !== null && phase.start < freeze)
          expect([phase.id, start]).toEqual([phase.id, phase.start]);
        if (freeze >= 600) expect([phase.id, start, finish]).toEqual([phase.id, phase.start, phase.finish]);
      }
    }),
    runs(600),
  );
});

function committed(input: PlanInput, freeze: number): PlanInput {
  const dates = new Map(plan(input).phases.map((phase) => [phase.id, phase]));
  const phases = input.phases.map((phase) => {
    const { start, finish, crewId } = dates.get(phase.id)!;
    if (start === null || finish === null) return phase;
    return { ...phase, commitment: { start, finish, ...(crewId === null ? {} : { crewId }) } };
  });
  return { ...input, freezeUntil: slot(freeze), phases };
}
