import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { readdirSync } from 'node:fs';
import { wattsPerSquareFoot } from '../../units/electrical.js';
import { feet, inches } from '../../units/length.js';
import { psi } from '../../units/stress.js';
import { hours } from '../../units/time.js';
import { percent } from '../../units/weather-units.js';
import { COMMON_PRACTICE, published } from '../source.js';
import { HEATED_ENTRY } from '../template/default/heated-entry.js';
import { blockedPhases } from './blocked-phases.js';
import { cableDepth } from './cable-depth.js';
import type { Finding } from './finding.js';
import { mayWaive } from './may-waive.js';
import { RULES } from './rules.js';
import { say } from './say.js';
import { spread } from './spread.js';

const frost = { depth: inches(48), source: 'building department' };

/** Every rule with facts that pass and facts that fail. */
const CASES: Record<keyof typeof RULES, { pass: () => Finding; fail: () => Finding }> = {
  'cable-cover': {
    pass: () => RULES['cable-cover'](inches(2)),
    fail: () => RULES['cable-cover'](inches(1)),
  },
  'cable-depth': {
    pass: () => RULES['cable-depth'](inches(2.5)),
    fail: () => RULES['cable-depth'](inches(2.75)),
  },
  'cable-layout': {
    pass: () => RULES['cable-layout'](feet(350), { laid: true, closest: inches(3) }),
    fail: () =>
      RULES['cable-layout'](feet(440), {
        laid: false,
        why: 'the set is 51 ft too long',
        fits: { shortest: feet(292), longest: feet(389) },
      }),
  },
  'cable-spacing': {
    pass: () => RULES['cable-spacing'](inches(4)),
    fail: () => RULES['cable-spacing'](inches(13)),
  },
  'cold-lead-reach': {
    pass: () => RULES['cold-lead-reach'](feet(16), inches(6), feet(12)),
    fail: () => RULES['cold-lead-reach'](feet(12), inches(6), feet(12)),
  },
  'concrete-strength': {
    pass: () => RULES['concrete-strength'](psi(4000), percent(6), 'severe'),
    fail: () => RULES['concrete-strength'](psi(3000), percent(6), 'severe'),
  },
  'door-drop': {
    pass: () => RULES['door-drop'](inches(1), true),
    fail: () => RULES['door-drop'](inches(2), true),
  },
  'drainage-slope': {
    pass: () => RULES['drainage-slope'](percent(2)),
    fail: () => RULES['drainage-slope'](percent(1)),
  },
  'excavation-protection': {
    pass: () => RULES['excavation-protection'](feet(6), 'protected'),
    fail: () => RULES['excavation-protection'](feet(6), 'found-stable'),
  },
  guard: {
    pass: () => RULES.guard(inches(36), true),
    fail: () => RULES.guard(inches(36), false),
  },
  handrail: {
    pass: () => RULES.handrail(4, true),
    fail: () => RULES.handrail(4, false),
  },
  'heat-supplied': {
    pass: () => RULES['heat-supplied'](wattsPerSquareFoot(45), wattsPerSquareFoot(40), COMMON_PRACTICE),
    fail: () => RULES['heat-supplied'](wattsPerSquareFoot(35), wattsPerSquareFoot(40), COMMON_PRACTICE),
  },
  'landing-depth': {
    pass: () => RULES['landing-depth'](inches(60)),
    fail: () => RULES['landing-depth'](inches(35)),
  },
  'landing-slope': {
    pass: () => RULES['landing-slope'](percent(2)),
    fail: () => RULES['landing-slope'](percent(3)),
  },
  'lap-length': {
    pass: () => RULES['lap-length'](inches(24), 4, 40),
    fail: () => RULES['lap-length'](inches(24), 4, 60),
  },
  'rebar-cover': {
    pass: () => RULES['rebar-cover'](inches(3), 4, 'cast-against-earth'),
    fail: () => RULES['rebar-cover'](inches(2), 4, 'cast-against-earth'),
  },
  'silica-respirator': {
    pass: () => RULES['silica-respirator'](hours(2), true, 10),
    fail: () => RULES['silica-respirator'](hours(2), true, 0),
  },
  'footing-frost-depth': {
    pass: () => RULES['footing-frost-depth'](inches(50), frost),
    fail: () => RULES['footing-frost-depth'](inches(47), frost),
  },
  'power-density': {
    pass: () => RULES['power-density'](wattsPerSquareFoot(50)),
    fail: () => RULES['power-density'](wattsPerSquareFoot(130)),
  },
  'riser-height': {
    pass: () => RULES['riser-height'](inches(7)),
    fail: () => RULES['riser-height'](inches(8)),
  },
  'riser-spread': {
    pass: () => RULES['riser-spread']([inches(7), inches(7.25)]),
    fail: () => RULES['riser-spread']([inches(7), inches(7.5)]),
  },
  'shallow-footing': {
    pass: () => RULES['shallow-footing'](false),
    fail: () => RULES['shallow-footing'](true),
  },
  'tread-depth': {
    pass: () => RULES['tread-depth'](inches(11)),
    fail: () => RULES['tread-depth'](inches(9)),
  },
  'uncut-cable': {
    pass: () => RULES['uncut-cable'](true),
    fail: () => RULES['uncut-cable'](false),
  },
  'walk-base': {
    pass: () => RULES['walk-base'](inches(4)),
    fail: () => RULES['walk-base'](inches(1.5)),
  },
};

describe('every rule', () => {
  const notRules = [
    'amendment',
    'blocked-phases',
    'design-findings',
    'finding',
    'may-waive',
    'rules',
    'say',
    'spread',
  ];

  it('is a file and a row in the list', () => {
    const files = readdirSync(new URL('.', import.meta.url))
      .filter((file) => file.endsWith('.ts') && !file.endsWith('.spec.ts'))
      .map((file) => file.replace('.ts', ''))
      .filter((name) => !notRules.includes(name));
    expect(files.sort()).toEqual(Object.keys(RULES).sort());
  });

  it.each(Object.entries(CASES))('%s passes and fails, and says which rule it is', (name, { pass, fail }) => {
    expect(pass()).toMatchObject({ rule: name, ok: true });
    expect(fail()).toMatchObject({ rule: name, ok: false });
  });

  it.each(Object.entries(CASES))(
    '%s says what was measured, the limit and the source either way',
    (_, { pass, fail }) => {
      for (const finding of [pass(), fail()]) {
        expect(finding.measured).not.toBe('');
        expect(finding.limit).not.toBe('');
        expect(finding.source.text).not.toBe('');
        expect(finding.text).not.toBe('');
      }
      expect(fail().text).not.toBe(pass().text);
    },
  );

  it('where work can hurt someone carries a caution', () => {
    for (const [name, { fail }] of Object.entries(CASES)) {
      if (name !== 'cable-depth') expect(fail().caution).toBeTruthy();
    }
  });
});

describe('boundaries', () => {
  it('cable at 2½ in is near enough by the rule of the trade', () => {
    expect(cableDepth(inches(2.5))).toMatchObject({ ok: true, source: { mark: 'T' } });
    expect(cableDepth(inches(2.51)).ok).toBe(false);
  });

  it('thirds that add up to a limit are not refused for float noise', () => {
    expect(RULES['riser-spread']([inches(7), inches(7 + 0.1 + 0.2 + 0.075)]).ok).toBe(true);
  });

  it('says how far a footing is short', () => {
    expect(RULES['footing-frost-depth'](inches(44.5), frost).text).toBe(
      'Footing is 3.5 in short of frost: dig deeper',
    );
  });

  it('a cold lead of just what is asked reaches, and no less', () => {
    // 18 in outside, 12 ft inside, 6 in free: 14 ft. Arithmetic, no source.
    expect(RULES['cold-lead-reach'](feet(14), inches(18), feet(12))).toMatchObject({
      ok: true,
      limit: 'at least 14 ft: 18 in outside, 12 ft inside, 6 in free',
    });
    expect(RULES['cold-lead-reach'](feet(13.99), inches(18), feet(12)).ok).toBe(false);
  });

  it('a set that cannot be laid says which lengths can, in whole feet that do fit', () => {
    const why = 'too long';
    const fits = { shortest: feet(291.2), longest: feet(389.9) };
    expect(RULES['cable-layout'](feet(440), { laid: false, why, fits }).limit).toBe('292 to 389 ft');
    expect(RULES['cable-layout'](feet(440), { laid: false, why, fits: null }).limit).toContain(
      'all of the label',
    );
  });

  it('says which side of the spacing was missed', () => {
    expect(RULES['cable-spacing'](inches(2)).text).toContain('too close');
    expect(RULES['cable-spacing'](inches(14)).text).toContain('too far apart');
  });
});

describe('what rules print with', () => {
  it('prints numbers as a tape is read', () => {
    expect(say(7.5, 'in')).toBe('7.5 in');
    expect(say(1 / 3, 'in')).toBe('0.333 in');
    expect(say(4, '')).toBe('4');
  });

  it('a spread is never negative and 0 for one value', () => {
    expect(spread([])).toBe(0);
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 1 }), (values) => {
        expect(spread(values)).toBeGreaterThanOrEqual(0);
        expect(spread([values[0] ?? 0])).toBe(0);
      }),
    );
  });
});

describe('what a broken rule blocks', () => {
  const kinds = HEATED_ENTRY.phases.map((phase) => phase.kind);

  it.each(Object.entries(CASES))(
    '%s blocks phases that there are, and none while it is kept',
    (_, { pass, fail }) => {
      expect(blockedPhases(pass())).toEqual([]);
      for (const kind of blockedPhases(fail())) expect(kinds).toContain(kind);
    },
  );

  it('is nothing for advice and for what is no rule of the design', () => {
    expect(blockedPhases({ rule: 'cable-depth', ok: false })).toEqual([]);
    expect(blockedPhases({ rule: 'toString', ok: false })).toEqual([]);
  });

  it('is the pour for a footing that does not reach under frost', () => {
    expect(blockedPhases({ rule: 'footing-frost-depth', ok: false })).toEqual(['footing-pour']);
  });
});

describe('what an office may waive', () => {
  it('is what trade and common practice ask for, never what a code does, never a cut cable', () => {
    expect(mayWaive(CASES['cable-spacing'].fail())).toBe(true);
    expect(mayWaive(CASES['cable-layout'].fail())).toBe(true);
    expect(mayWaive(CASES['uncut-cable'].fail())).toBe(false);
    for (const rule of ['cable-cover', 'footing-frost-depth', 'riser-spread', 'power-density'] as const)
      expect(mayWaive(CASES[rule].fail())).toBe(false);
  });
});

describe('an amendment of the place', () => {
  const local = { limit: inches(8.25), source: published('local ordinance 12') };

  it('takes the place of the code, with its own source', () => {
    expect(RULES['riser-height'](inches(8.25), local)).toMatchObject({ ok: true, source: local.source });
    expect(RULES['riser-height'](inches(8.26), local)).toMatchObject({ ok: false, limit: 'at most 8.25 in' });
  });

  it('may ask for more than the code does', () => {
    const strict = { limit: inches(11), source: local.source };
    expect(RULES['tread-depth'](inches(10.5), strict).ok).toBe(false);
    expect(RULES['landing-depth'](inches(48), { ...strict, limit: inches(60) }).ok).toBe(false);
    expect(RULES['door-drop'](inches(1), true, { ...strict, limit: inches(0.5) }).ok).toBe(false);
  });
});

describe('limits on both sides', () => {
  it.each([
    [7.75, false, true],
    [7.76, false, false],
    [1.5, true, true],
    [1.51, true, false],
    [0, true, true],
    [-0.1, true, false],
  ])('landing %p in under the sill, door over it %p: %p', (drop, swings, ok) => {
    expect(RULES['door-drop'](inches(drop), swings).ok).toBe(ok);
  });

  it.each([
    [5, true],
    [7, true],
    [4.9, false],
    [7.1, false],
  ])('air of %p %% where the weathering is severe: %p', (air, ok) => {
    expect(RULES['concrete-strength'](psi(3500), percent(air), 'severe').ok).toBe(ok);
  });

  it('asks for no air where it does not freeze', () => {
    expect(RULES['concrete-strength'](psi(2500), percent(1), 'negligible')).toMatchObject({
      ok: true,
      limit: 'at least 2500 psi',
    });
  });

  it('tables end where they end', () => {
    expect(() => RULES['lap-length'](inches(40), 7, 60)).toThrow('has #4, #5 and #6, not #7');
    expect(() => RULES['rebar-cover'](inches(3), 2, 'weather')).toThrow('numbered 3 to 11');
  });

  it('nobody goes into ground that no one has looked at', () => {
    expect(RULES['excavation-protection'](feet(3), 'none').text).toContain('competent person');
    expect(RULES['excavation-protection'](feet(5), 'none').text).toContain('Slope, shore or shield');
  });
});
