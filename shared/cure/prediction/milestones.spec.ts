import { describe, expect, it } from '@jest/globals';
import { psi } from '../../units/stress.js';
import { celsius } from '../../units/temperature.js';
import { hours } from '../../units/time.js';
import { ageMethod } from '../age-method.js';
import { steadyIntervals } from '../interval.js';
import { ageOfMixtureStrength } from '../mixture-strength.js';
import { DEFAULT_MIXTURES } from '../mixture.js';
import { after, placementOf } from '../testing/placement-fixture.js';
import { AgeClock, crossing } from './age-clock.js';
import { Milestones, type AgeStep } from './milestones.js';

const release = ageOfMixtureStrength(DEFAULT_MIXTURES.concrete, psi(1000))!;
const freeze = ageOfMixtureStrength(DEFAULT_MIXTURES.concrete, psi(500))!;
const step = (from: number, to: number, more: Partial<AgeStep> = {}): AgeStep => ({
  from: after(from),
  to: after(to),
  counted: [from, to],
  coldest: [from, to],
  temperature: 10,
  ...more,
});
const begun = () => {
  const milestones = new Milestones(placementOf());
  milestones.begin(after(0), 15);
  return milestones;
};

describe('milestones', () => {
  it('are noted at the instant in the step at which the age is reached', () => {
    const milestones = begun();
    milestones.note(step(0, 40), 'predicted');
    expect((milestones.release!.at - after(0)) / 3_600_000).toBeCloseTo(release, 6);
    expect((milestones.firstFreeze!.at - after(0)) / 3_600_000).toBeCloseTo(freeze, 6);
  });

  it('keep the first of their kind and what it rests on', () => {
    const milestones = begun();
    milestones.note(step(0, 40), 'measured');
    milestones.note(step(40, 80), 'predicted');
    expect(milestones.release).toMatchObject({ basis: 'measured' });
    expect(milestones.firstFreeze).toMatchObject({ basis: 'measured' });
  });

  it('go by the coldest point for the first freezing, by what is counted for the release', () => {
    const milestones = begun();
    milestones.note(step(0, 40, { coldest: [0, freeze - 0.1] }), 'predicted');
    expect(milestones.release).not.toBeNull();
    expect(milestones.firstFreeze).toBeNull();
  });

  it('note freezing only before 500 psi', () => {
    const early = begun();
    early.note(step(0, 5, { temperature: -1 }), 'predicted');
    expect(early.freezes).toMatchObject({ at: after(5), age: 5 });
    const late = begun();
    late.note(step(0, freeze + 1), 'predicted');
    late.note(step(freeze + 1, freeze + 2, { temperature: -1 }), 'predicted');
    expect(late.freezes).toBeNull();
  });

  it('know the lowest temperature until the release, not after it', () => {
    const milestones = begun();
    milestones.note(step(0, 5, { temperature: 4 }), 'predicted');
    milestones.note(step(5, 40, { temperature: 8 }), 'predicted');
    milestones.note(step(40, 50, { temperature: -9 }), 'predicted');
    expect(milestones.lowest).toMatchObject({ at: after(5), temperature: 4 });
  });

  it('note what is frozen, or needs nothing, as it is placed', () => {
    const milestones = new Milestones(placementOf({ required: psi(0) }));
    milestones.begin(after(0), -1);
    expect(milestones.freezes).toMatchObject({ at: after(0), age: 0 });
    expect(milestones.release).toMatchObject({ at: after(0) });
  });
});

describe('the age of a placement', () => {
  it('is counted alike in intervals and in hours at one temperature', () => {
    const [byInterval, byHours] = [new AgeClock(ageMethod()), new AgeClock(ageMethod())];
    for (const t of [20, 5, -3, 12]) {
      byInterval.addInterval(steadyIntervals([hours(3)], [celsius(t)])[0]!);
      byHours.addSteady(3, celsius(t));
    }
    expect(byHours.age).toBeCloseTo(byInterval.age, 9);
  });

  it('goes on from another without changing it', () => {
    const first = new AgeClock(ageMethod());
    first.addSteady(10, celsius(20));
    const second = new AgeClock(ageMethod(), first);
    second.addSteady(5, celsius(20));
    expect([first.age, second.age].map((age) => Math.round(age * 1e9) / 1e9)).toEqual([10, 15]);
  });

  it('is reached in between as it grows, at the end when it does not', () => {
    expect(crossing(5, 0, 10, 100, 200)).toBe(150);
    expect(crossing(0, 0, 10, 100, 200)).toBe(100);
    expect(crossing(5, 5, 5, 100, 200)).toBe(200);
  });
});
