import { describe, expect, it } from '@jest/globals';
import { rValue } from '../../units/insulation.js';
import { fahrenheit } from '../../units/temperature.js';
import { hours } from '../../units/time.js';
import { tentPlan } from '../testing/cure-fixture.js';
import { protectionFaults } from './check-plan.js';
import { equipmentDays } from './equipment-days.js';
import {
  changesOf,
  NO_PROTECTION,
  protectionAt,
  smallPourPlan,
  type ProtectionPlan,
} from './protection-plan.js';

const blanket = { from: hours(0), until: null, layers: 1, each: rValue(4) };
const heat = { from: hours(0), until: hours(12), inside: fahrenheit(60) };

describe('a protection plan', () => {
  it('of a small pour heats first and then lays the blankets', () => {
    expect(protectionAt(tentPlan(), 0)).toEqual({ blanketR: 0, inside: 60 });
    expect(protectionAt(tentPlan(), 11.9)).toEqual({ blanketR: 0, inside: 60 });
    expect(protectionAt(tentPlan(), 12)).toEqual({ blanketR: 8, inside: null });
    expect(changesOf(tentPlan())).toEqual([12]);
  });

  it('without an enclosure lays them at once', () => {
    const plan = smallPourPlan({
      blanketLayers: 1,
      blanketR: rValue(4),
      enclosure: null,
      heatHours: hours(12),
    });
    expect(protectionAt(plan, 0)).toEqual({ blanketR: 4, inside: null });
    expect(plan.heat).toEqual([]);
  });

  it('adds its blankets up and takes the cooler of two enclosures', () => {
    const plan: ProtectionPlan = {
      blankets: [blanket, { ...blanket, from: hours(6), layers: 2 }],
      heat: [heat, { ...heat, inside: fahrenheit(50) }],
      offAt: null,
    };
    expect(protectionAt(plan, 3)).toEqual({ blanketR: 4, inside: 50 });
    expect(protectionAt(plan, 6)).toEqual({ blanketR: 12, inside: 50 });
  });

  it('that came off is off', () => {
    const plan = { ...tentPlan(), offAt: hours(48) };
    expect(protectionAt(plan, 47.9).blanketR).toBe(8);
    expect(protectionAt(plan, 48)).toEqual({ blanketR: 0, inside: null });
    expect(changesOf(plan)).toEqual([12, 48]);
    expect(protectionAt(NO_PROTECTION, 1)).toEqual({ blanketR: 0, inside: null });
  });
});

describe('equipment', () => {
  it('is counted in days of 24 h, blankets by layer, until the end', () => {
    expect(equipmentDays(tentPlan(), hours(72))).toEqual({
      blanket: 5,
      enclosure: 0.5,
      heater: 0.5,
      heatingHours: 12,
    });
  });

  it('is not counted after it came off, nor when the end comes before the heat does', () => {
    expect(equipmentDays({ ...tentPlan(), offAt: hours(36) }, hours(72)).blanket).toBe(2);
    expect(equipmentDays(tentPlan(), hours(6))).toMatchObject({ blanket: 0, heatingHours: 6 });
    expect(equipmentDays(NO_PROTECTION, hours(72))).toEqual({
      blanket: 0,
      enclosure: 0,
      heater: 0,
      heatingHours: 0,
    });
  });
});

describe('faults of a plan', () => {
  it('are none in one that can be carried out', () => {
    expect(protectionFaults(tentPlan())).toEqual([]);
    expect(protectionFaults(NO_PROTECTION)).toEqual([]);
  });

  it.each([
    [{ blankets: [{ ...blanket, from: hours(-1) }] }, 'give hours from placing'],
    [{ heat: [{ ...heat, until: hours(0) }] }, 'must end after 0 h'],
    [{ blankets: [{ ...blanket, layers: 7 }] }, 'give 0 to 6'],
    [{ blankets: [{ ...blanket, layers: 1.5 }] }, 'give 0 to 6'],
    [{ blankets: [{ ...blanket, each: rValue(0) }] }, 'give more than 0'],
    [{ heat: [{ ...heat, inside: fahrenheit(32) }] }, 'give one over 32'],
    [{ heat: [{ ...heat, inside: fahrenheit(140) }] }, 'up to 100'],
    [{ offAt: hours(-2) }, 'before placing'],
  ])('say what to do: %j', (wrong, words) => {
    expect(protectionFaults({ ...NO_PROTECTION, ...wrong })).toEqual([expect.stringContaining(words)]);
  });

  it('are told all at once', () => {
    const plan = {
      blankets: [{ ...blanket, layers: 9 }],
      heat: [{ ...heat, inside: fahrenheit(0) }],
      offAt: hours(-1),
    };
    expect(protectionFaults(plan)).toHaveLength(3);
  });
});
