import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { readdirSync } from 'node:fs';
import { wattsPerSquareFoot } from '../../units/electrical.js';
import { inches } from '../../units/length.js';
import { cableDepth } from './cable-depth.js';
import type { Finding } from './finding.js';
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
  'cable-spacing': {
    pass: () => RULES['cable-spacing'](inches(4)),
    fail: () => RULES['cable-spacing'](inches(13)),
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
  const notRules = ['finding', 'say', 'spread', 'rules', 'design-findings'];

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
