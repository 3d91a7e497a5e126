import { describe, expect, test } from '@jest/globals';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { inputWith, work } from '../spec-input.js';
import { faults, silent, withPhase } from './broken-plan.js';

describe('a phase without a place', () => {
  const input = inputWith({
    freezeUntil: slot(96),
    phases: [
      work('wire', 4, { trade: 'electrician', commitment: { start: slot(40), finish: slot(44) } }),
      work('lay', 4),
    ],
  });
  const sound = plan(input);

  test('is told of, with what was promised', () => {
    expect(sound.conflicts.map(({ code }) => code).sort()).toEqual(['commitmentBroken', 'crewMissing']);
    expect(faults(input, sound)).toEqual([]);
  });

  test('whose cause is kept quiet is found out', () => {
    const conflicts = sound.conflicts.filter(({ code }) => code !== 'crewMissing');
    expect(faults(input, { ...sound, conflicts })).toEqual(['facts wire: hides why it has no place']);
  });

  test('whose lost promise is kept quiet is found out', () => {
    const conflicts = sound.conflicts.filter(({ code }) => code !== 'commitmentBroken');
    expect(faults(input, { ...sound, conflicts })).toEqual(['facts wire: lost its commitment']);
  });

  test('may be one that nobody was told of', () => {
    const later = { ...input, freezeUntil: slot(0) };
    expect(faults(later, plan(later))).toEqual([]);
  });
});

describe('what has happened', () => {
  const input = inputWith({
    now: slot(40),
    phases: [work('begun', 16, { facts: { actualStart: slot(30), crewId: 'masons' } })],
  });
  const sound = plan(input);
  const wrong = 'facts begun: does not go on from where it started';

  test('stands in the plan', () => {
    expect(faults(input, sound)).toEqual([]);
  });

  test('and is not moved, called off, or over before it is', () => {
    expect(faults(input, withPhase(sound, 'begun', { start: slot(31) }))).toContain(wrong);
    expect(faults(input, withPhase(sound, 'begun', { state: 'planned' }))).toContain(wrong);
    expect(faults(input, withPhase(sound, 'begun', { finish: null }))).toContain(wrong);
    expect(faults(input, withPhase(sound, 'begun', { finish: slot(39) }))).toContain(wrong);
  });
});

test('a pin that is left in silence is found out', () => {
  const input = inputWith({ now: slot(96), phases: [work('lay', 8, { facts: { pinnedStart: slot(30) } })] });
  const moved = plan(input);
  expect(moved.conflicts.map(({ code }) => code)).toEqual(['pinMoved']);
  expect(faults(input, moved)).toEqual([]);
  expect(faults(input, silent(moved))).toEqual(['facts lay: left its pin']);
});

test('work that ends after the horizon is found out', () => {
  const input = inputWith({ phases: [work('lay', 40)] });
  const short = { ...input, horizon: 96 };
  expect(faults(short, plan(input))).toEqual(['facts lay: ends after the horizon']);
});

test('a phase that nobody asked for is found out', () => {
  const input = inputWith({ phases: [work('lay', 8), work('more', 8)] });
  const less = { ...input, phases: input.phases.slice(0, 1) };
  expect(faults(less, plan(input))).toContain('facts plan: has phases nobody asked for');
});

describe('a promise inside the freeze window', () => {
  const crews = ['a', 'b'].map((id) => ({ id, trades: ['mason'], calendarId: 'workdays' }));
  const promised = (crewId: string) =>
    inputWith({
      crews,
      freezeUntil: slot(96),
      phases: [work('lay', 8, { commitment: { start: slot(40), finish: slot(48), crewId } })],
    });

  test('is kept with its crew; another crew that nobody is told of is found out', () => {
    const sound = plan(promised('b'));
    expect(sound.phases[0]).toMatchObject({ start: 40, crewId: 'b' });
    expect(faults(promised('b'), withPhase(sound, 'lay', { crewId: 'a' }))).toEqual([
      'facts lay: left its commitment',
    ]);
  });

  test('with a crew that is gone is kept by another', () => {
    expect(faults(promised('gone'), plan(promised('gone')))).toEqual([]);
  });
});
