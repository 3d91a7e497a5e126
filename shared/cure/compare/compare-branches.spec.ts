import { describe, expect, it } from '@jest/globals';
import { fahrenheit } from '../../units/temperature.js';
import { hours } from '../../units/time.js';
import { NO_PROTECTION } from '../protection/protection-plan.js';
import { airOf, requestOf, tentPlan } from '../testing/cure-fixture.js';
import { after, placementOf } from '../testing/placement-fixture.js';
import { compareBranches } from './compare-branches.js';
import { cureBranch } from './cure-branch.js';

const protect = cureBranch('protect', requestOf({ plan: tentPlan() }));
/** Three days later it is mild. */
const wait = cureBranch(
  'wait',
  requestOf({
    placement: placementOf({ placedAt: after(72) }),
    air: airOf(240, (hour) => (hour < 72 ? 12 : 50)),
  }),
);

describe('protect or wait', () => {
  const rows = compareBranches(protect, wait);
  const row = (key: string) => rows.find((each) => each.key === key)!;

  it('shows when each is placed and expected to be strong', () => {
    expect(row('placed')).toMatchObject({ protect: after(0), wait: after(72) });
    expect(row('release').protect).toBeLessThan(row('release').wait!);
  });

  it('counts equipment and heating of the protected one only', () => {
    expect(row('heating-hours')).toMatchObject({ protect: 12, wait: 0 });
    expect(row('heater-days')).toMatchObject({ protect: 0.5, wait: 0 });
    // Two layers from the end of the heat until the third day is over.
    expect(row('blanket-days')).toMatchObject({ protect: 5, wait: 0 });
  });

  it('shows the lowest temperature and the hours to 500 psi of both', () => {
    expect(row('lowest').protect).toBeCloseTo(protect.prediction.lowest.coldest, 9);
    expect(row('first-freeze-hours').wait).toBeCloseTo(wait.prediction.hoursToFirstFreeze!, 9);
    expect(row('strength-at-freezing')).toMatchObject({ protect: null, wait: null });
  });

  it('names each row once', () => {
    expect(new Set(rows.map(({ label }) => label)).size).toBe(rows.length);
  });
});

describe('a branch', () => {
  it('that heats tells of carbon monoxide, fire and soft surfaces; one that waits does not', () => {
    expect(protect.cautions.join(' ')).toMatch(/extinguisher.*Carbon monoxide.*carbonation/s);
    expect(wait.cautions.join(' ')).not.toContain('Carbon monoxide');
    expect(wait.cautions[0]).toContain('engineer');
  });

  it('that freezes says so, and that its strength is out of sight', () => {
    const bare = cureBranch('wait', requestOf({ plan: NO_PROTECTION }));
    expect(bare.cautions.join(' ')).toContain('freeze before 500 psi');
    expect(bare.cautions.join(' ')).toContain('not in sight');
    expect(bare.protectedHours).toBeNull();
  });

  it('whose forecast ends too soon says so', () => {
    const short = cureBranch('protect', requestOf({ plan: tentPlan(), air: airOf(14, () => 30) }));
    expect(short.cautions.join(' ')).toContain('unknown');
  });

  it('is protected for its days, or until it is strong where that takes longer', () => {
    expect(protect.protectedHours).toBe(72);
    expect(
      cureBranch('protect', requestOf({ plan: tentPlan() }), 'partial-load-exposed').protectedHours,
    ).toBe(144);
    const byStrength = cureBranch('protect', requestOf({ plan: tentPlan() }), 'full-load');
    expect(byStrength.protectedHours).toBeLessThan(72);
  });

  it('looks at the temperature as placed', () => {
    expect(protect.placing.ok).toBe(true);
    const cold = requestOf({ placement: placementOf({ placedTemperature: fahrenheit(54) }) });
    expect(cureBranch('wait', cold).placing).toMatchObject({ ok: false, rule: 'placing-temperature' });
  });

  it('refuses a plan that cannot be carried out, and says what to change', () => {
    const plan = { ...tentPlan(), offAt: hours(-1) };
    expect(() => cureBranch('protect', requestOf({ plan }))).toThrow('cannot come off before placing');
  });
});
