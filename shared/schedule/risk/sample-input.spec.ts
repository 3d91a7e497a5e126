import { expect, test } from '@jest/globals';
import type { Phase, PlanInput } from '../model.js';
import { slot } from '../slot.js';
import { cure, inputWith } from '../spec-input.js';
import { Draws } from './draws.js';
import type { RiskModel } from './risk-model.js';
import { distributionsOf, sampleInput } from './sample-input.js';

const certain = (slots: number) => ({ optimistic: slots, likely: slots, pessimistic: slots });
const model = (durations: RiskModel['durations']): RiskModel => ({ durations, companyShare: 0, jobShare: 0 });

function sampled(input: PlanInput, risk: RiskModel, durations = true): readonly Phase[] {
  const sources = { durations, weather: false };
  return sampleInput(input, risk, distributionsOf(risk), sources, new Draws(1, 0)).phases;
}

const begun = (length: number, remaining: number): Phase =>
  cure('a', length, { facts: { actualStart: slot(0), remaining } });

test('work under way keeps the share of it that is left, whatever length is drawn', () => {
  const [phase] = sampled(inputWith({ phases: [begun(40, 10)] }), model({ a: certain(80) }));
  expect([phase!.duration.slots, phase!.facts!.remaining]).toEqual([80, 20]);
});

test('where no length was planned what is left stays as it was said', () => {
  const [phase] = sampled(inputWith({ phases: [begun(0, 6)] }), model({ a: certain(12) }));
  expect([phase!.duration.slots, phase!.facts!.remaining]).toEqual([12, 6]);
});

test('nothing is shorter than a slot', () => {
  expect(sampled(inputWith({ phases: [cure('a', 4)] }), model({ a: certain(0.2) }))[0]!.duration.slots).toBe(
    1,
  );
});

test('what is over, what has no estimate, and all of it without that source of chance are as they were', () => {
  const over = cure('a', 4, { facts: { actualStart: slot(0), actualFinish: slot(9) } });
  const input = inputWith({ phases: [over, cure('b', 4), cure('c', 4)] });
  const risk = model({ a: certain(20), c: certain(30) });
  expect(sampled(input, risk).map(({ duration }) => duration.slots)).toEqual([4, 4, 30]);
  expect(sampled(input, risk, false)).toBe(input.phases);
});
