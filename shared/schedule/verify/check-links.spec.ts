import { describe, expect, test } from '@jest/globals';
import type { Link, PlanInput } from '../model.js';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { inputWith, link, work } from '../spec-input.js';
import { faults, silent, withPhase } from './broken-plan.js';

/** Mortar is mixed at 28 to 32 and laid from `opens` on; at most so long after. */
const mixed = (most: Pick<Link, 'mostLag' | 'mostLagIn'>, opens: number): PlanInput =>
  inputWith({
    crews: ['a', 'b'].map((id) => ({ id, trades: ['mason'], calendarId: 'workdays' })),
    phases: [
      work('mix', 4, { facts: { pinnedStart: slot(28) } }),
      work('lay', 4, { gates: [{ kind: 'notBefore', id: 'hold', at: slot(opens), cause: 'holdPoint' }] }),
    ],
    links: [{ ...link('mix', 'lay'), ...most }],
  });

describe('a greatest lag', () => {
  test('that is overrun is told of, by how much', () => {
    const input = mixed({ mostLag: 6 }, 40);
    const made = plan(input);
    expect(made.conflicts).toMatchObject([{ code: 'lagExceeded', by: 2 }]);
    expect(faults(input, made)).toEqual([]);
  });

  test('that is overrun in silence is found out', () => {
    const input = mixed({ mostLag: 6 }, 40);
    expect(faults(input, silent(plan(input)))).toEqual([
      'link mix>layFS: lay comes 8 slots after mix, at most 6',
    ]);
  });

  test('that is overrun by more than is said is found out', () => {
    const input = mixed({ mostLag: 6 }, 40);
    const made = plan(input);
    const later = withPhase(made, 'lay', { start: slot(41), finish: slot(45) });
    expect(faults(input, later)).toContain('link mix>layFS: lay comes 9 slots after mix, at most 6');
  });

  test('counted in working time lets the night pass', () => {
    const overnight = 96 + 28 + 2;
    const working = mixed({ mostLag: 30, mostLagIn: 'working' }, overnight);
    expect(faults(working, silent(plan(working)))).toEqual([]);
    const less = mixed({ mostLag: 29, mostLagIn: 'working' }, overnight);
    expect(faults(less, silent(plan(less)))).toEqual([
      'link mix>layFS: lay comes 30 slots after mix, at most 29',
    ]);
  });
});

test('a phase that is placed though what it follows is not is found out', () => {
  const input = inputWith({ phases: [work('a', 4), work('b', 4)], links: [link('a', 'b')] });
  const broken = withPhase(plan(input), 'a', { start: null, finish: null });
  expect(faults(input, broken)).toContain('link a>bFS: b is placed though a is not');
});

describe('work that has begun', () => {
  const begun = (kind: Link['kind']): PlanInput =>
    inputWith({
      now: slot(32),
      phases: [work('a', 16, { trade: 'electrician' }), work('b', 4, { facts: { actualStart: slot(28) } })],
      links: [link('a', 'b', kind)],
    });

  test('is not asked whether it should have, nor to wait for what has no place', () => {
    for (const kind of ['FS', 'FF'] as const) expect(faults(begun(kind), plan(begun(kind)))).toEqual([]);
  });

  test('stays open until what it must outlast is over', () => {
    const crews = ['mason', 'electrician'].map((trade) => ({
      id: trade,
      trades: [trade],
      calendarId: 'workdays',
    }));
    const input = { ...begun('FF'), crews };
    const sound = plan(input);
    expect(faults(input, sound)).toEqual([]);
    const { finish } = sound.phases[0]!;
    const early = withPhase(sound, 'b', { finish: slot(finish! - 1) });
    expect(faults(input, early)).toContain('link a>bFF: b keeps -1 of 0 slots to a');
  });
});
