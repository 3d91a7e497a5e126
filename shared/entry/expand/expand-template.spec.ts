import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { findCircle } from '../template/find-circle.js';
import type { EntryPlanDraft } from '../template/draft.js';
import { HEATED_ENTRY } from '../template/default/heated-entry.js';
import { checkedEntry } from '../testing/checked-entry.js';
import type { Loose } from '../testing/entry-fixture.js';
import { expandTemplate } from './expand-template.js';

const draftOf = (change?: (entry: Loose) => void): EntryPlanDraft =>
  expandTemplate(HEATED_ENTRY, checkedEntry(change));
const keysOf = (draft: EntryPlanDraft) => draft.phases.map((phase) => phase.key);
const predecessors = (draft: EntryPlanDraft, key: string) =>
  draft.links.filter((link) => link.to === key).map((link) => link.from);

const walkOnly = (entry: Loose): void => {
  entry.areas = [entry.areas[2]];
  Object.assign(entry.heatingSets[0], { areas: ['walk'], heatedFeet: 180 });
  entry.footing = null;
};
const unheated = (entry: Loose): void => {
  for (const area of entry.areas) area.heated = false;
  entry.heatingSets = [];
};
const secondSet = (entry: Loose): void => {
  entry.heatingSets[0].areas = ['landing', 'steps'];
  entry.heatingSets[0].heatedFeet = 190;
  entry.heatingSets.push({
    ...entry.heatingSets[0],
    key: 'set-2',
    name: 'Set 2',
    areas: ['walk'],
    heatedFeet: 180,
  });
};

describe('a landing, steps and a walk on one set', () => {
  const draft = draftOf();

  it('gives each area its own chain', () => {
    for (const area of ['landing', 'steps']) {
      expect(keysOf(draft)).toEqual(
        expect.arrayContaining(
          ['mesh', 'cable', 'cable-test', 'veneer', 'stone', 'bed-cure'].map((kind) => `${kind}.${area}`),
        ),
      );
    }
    expect(keysOf(draft)).toEqual(
      expect.arrayContaining(
        ['walk-base', 'base-cure', 'cable', 'cable-test', 'stone', 'bed-cure'].map((kind) => `${kind}.walk`),
      ),
    );
    expect(keysOf(draft)).not.toContain('mesh.walk');
    expect(keysOf(draft)).not.toContain('veneer.walk');
    expect(keysOf(draft)).not.toContain('walk-base.landing');
  });

  it('lays the one cable through the areas in turn', () => {
    expect(predecessors(draft, 'cable.steps')).toEqual(['mesh.steps', 'cable.landing']);
    expect(predecessors(draft, 'cable.walk')).toEqual(['base-cure.walk', 'cable.steps']);
    expect(predecessors(draft, 'cable.landing')).toEqual(['mesh.landing', 'penetrations']);
  });

  it('covers no area before its own test', () => {
    for (const area of ['landing', 'steps', 'walk']) {
      expect(predecessors(draft, `stone.${area}`)).toEqual(
        expect.arrayContaining([`cable-test.${area}`, 'rough-inspection']),
      );
    }
  });

  it('hooks up when the last area is tested, and seals after the first is laid', () => {
    expect(predecessors(draft, 'hookup.set-1')).toEqual(['cable-test.walk', 'rough-inspection']);
    expect(predecessors(draft, 'sealing.set-1')).toEqual(['cable.landing']);
  });

  it("waits the set's days over every bed before it is energised", () => {
    const lags = draft.links.filter((link) => link.to === 'energise.set-1' && link.from.startsWith('stone.'));
    expect(lags.map((link) => [link.from, link.lagMinutes, link.lagIn])).toEqual([
      ['stone.landing', 28 * 1440, 'elapsed'],
      ['stone.steps', 28 * 1440, 'elapsed'],
      ['stone.walk', 28 * 1440, 'elapsed'],
    ]);
  });

  it('takes a reading at every stage', () => {
    const readings = draft.holdPoints
      .filter((point) => point.kind === 'reading')
      .map((point) => `${point.phaseKey} ${point.gate} ${point.readingStage}`);
    expect(readings).toEqual([
      'cable.landing start received',
      'cable-test.landing finish laid',
      'cable-test.steps finish laid',
      'cable-test.walk finish laid',
      'stone.landing finish covered',
      'stone.steps finish covered',
      'stone.walk finish covered',
      'hookup.set-1 start beforeHookup',
    ]);
    for (const point of draft.holdPoints.filter((one) => one.kind === 'reading')) {
      expect(point).toMatchObject({ heatingSetKey: 'set-1', waivable: false });
    }
  });

  it('asks for the cable and its first reading only where the cable begins', () => {
    const at = draft.holdPoints.filter((point) => ['cable-delivered', 'leads'].includes(point.key));
    expect(at.map((point) => point.phaseKey)).toEqual(['cable.landing', 'cable.landing']);
  });

  it('puts the frost of the site into the check of the depth', () => {
    const depth = draft.holdPoints.find((point) => point.key === 'depth');
    expect(depth?.items[0]).toMatchObject({ id: 'footing-depth', limit: { atLeast: 48 } });
    expect(depth?.items[0]?.source.text).toContain('48 in by building department');
    expect(JSON.stringify(draft)).not.toContain('atLeastFrom');
  });

  it('has the three visits of the authority', () => {
    expect(draft.inspections.map((visit) => [visit.key, visit.phaseKey])).toEqual([
      ['footing', 'footing-pour'],
      ['electrical-rough', 'rough-inspection'],
      ['final', 'final-inspection'],
    ]);
  });

  it('has the clearances with their lead times', () => {
    expect(
      draft.clearances.map((clearance) => [clearance.key, clearance.leadMinutes / 1440, clearance.lifeDays]),
    ).toEqual([
      ['permit', 10, 180],
      ['mark-out', 4, 30],
      ['cable', 18, null],
      ['stone', 12, null],
      ['veneer-corners', 14, null],
    ]);
  });

  it('says what is placed, how thick, and what strength is asked', () => {
    expect(draft.placements).toEqual([
      { phaseKey: 'footing-pour', material: 'concrete', sectionInches: 10, requiredPsi: 1000 },
      { phaseKey: 'block', material: 'grout', sectionInches: 8, requiredPsi: 1500 },
      { phaseKey: 'walk-base.walk', material: 'concrete', sectionInches: 4, requiredPsi: 500 },
      { phaseKey: 'stone.landing', material: 'mortar', sectionInches: 1, requiredPsi: 0 },
      { phaseKey: 'stone.steps', material: 'mortar', sectionInches: 1, requiredPsi: 0 },
      { phaseKey: 'stone.walk', material: 'mortar', sectionInches: 1, requiredPsi: 0 },
    ]);
  });

  it('ties the cure of a walk to the base of the same walk', () => {
    const two = draftOf((entry) => {
      entry.areas.push({ ...entry.areas[2], key: 'walk-2', name: 'Second walk', heated: false });
    });
    const cures = two.holdPoints.filter((point) => point.key === 'base-strength');
    expect(cures.map((point) => [point.phaseKey, point.placementPhaseKey])).toEqual([
      ['base-cure.walk', 'walk-base.walk'],
      ['base-cure.walk-2', 'walk-base.walk-2'],
    ]);
  });

  it('ties the cure of the footing to its pour', () => {
    expect(draft.holdPoints.find((point) => point.key === 'footing-strength')).toMatchObject({
      phaseKey: 'footing-cure',
      gate: 'finish',
      placementPhaseKey: 'footing-pour',
      requiredPsi: 1000,
    });
  });

  it('names the area in the phase, and the set only where there are several', () => {
    expect(draft.phases.find((phase) => phase.key === 'stone.walk')?.name).toBe('Bed and stone: Walk');
    expect(draft.phases.find((phase) => phase.key === 'hookup.set-1')?.name).toBe('Electrical hookup');
    const two = draftOf(secondSet);
    expect(two.phases.find((phase) => phase.key === 'hookup.set-2')?.name).toBe('Electrical hookup: Set 2');
  });

  it('has one hookup, with the phase that energises', () => {
    expect(draft.hookups).toEqual([
      { heatingSetKey: 'set-1', phaseKey: 'hookup.set-1', energisePhaseKey: 'energise.set-1' },
    ]);
  });
});

describe('the work of a phase', () => {
  const minutes = (draft: EntryPlanDraft, key: string) =>
    draft.phases.find((phase) => phase.key === key)?.durationMinutes;

  it('is its quantities at their rates, shared by the crew, rounded up to 15 minutes', () => {
    const draft = draftOf();
    // Computed by hand: 60 + 98 ft² × 12 / 3 people = 452, rounded up.
    expect(minutes(draft, 'demo')).toBe(465);
    // 45 + 48 ft² × 20 / 2 people = 525.
    expect(minutes(draft, 'stone.walk')).toBe(525);
    // 15 + 2 sleeves × 75 / 2 people = 90.
    expect(minutes(draft, 'penetrations')).toBe(90);
  });

  it('of a cure is what the template says, by the clock', () => {
    expect(draftOf().phases.find((phase) => phase.key === 'block-cure')).toMatchObject({
      durationKind: 'elapsed',
      durationMinutes: 72 * 60,
      trade: null,
      crewSize: null,
    });
  });

  it('takes half as long with twice the people, set-up apart', () => {
    const twice = {
      ...HEATED_ENTRY,
      phases: HEATED_ENTRY.phases.map((phase) =>
        phase.kind === 'demo' && phase.duration.kind === 'work'
          ? { ...phase, duration: { ...phase.duration, crewSize: 6 } }
          : phase,
      ),
    };
    // 60 + 98 × 12 / 6 = 256, rounded up.
    expect(minutes(expandTemplate(twice, checkedEntry()), 'demo')).toBe(270);
  });
});

describe('other entries', () => {
  it('a walk alone is torn out, based, heated and stoned without anything in the ground', () => {
    const draft = draftOf(walkOnly);
    expect(keysOf(draft)).not.toEqual(expect.arrayContaining(['dig']));
    expect(keysOf(draft).filter((key) => key.startsWith('footing') || key.startsWith('block'))).toEqual([]);
    expect(predecessors(draft, 'walk-base.walk')).toEqual(['demo']);
    expect(predecessors(draft, 'penetrations')).toEqual(['demo']);
    expect(draft.inspections.map((visit) => visit.key)).toEqual(['electrical-rough', 'final']);
    expect(draft.clearances.map((clearance) => clearance.key)).toEqual(['permit', 'cable', 'stone']);
  });

  it('an unheated entry has no cable, no electrician and no reading', () => {
    const draft = draftOf(unheated);
    expect(draft.phases.filter((phase) => phase.trade === 'electrician' || phase.trade === 'cable')).toEqual(
      [],
    );
    expect(draft.holdPoints.filter((point) => point.kind === 'reading')).toEqual([]);
    expect(draft.hookups).toEqual([]);
    expect(predecessors(draft, 'stone.landing')).toEqual(['block-cure', 'veneer.landing']);
    expect(draft.inspections.map((visit) => visit.key)).toEqual(['footing', 'final']);
    expect(predecessors(draft, 'hand-over')).toEqual(['final-inspection']);
  });

  it('two sets are laid, read, hooked up and energised apart', () => {
    const draft = draftOf(secondSet);
    expect(predecessors(draft, 'cable.walk')).toEqual(['base-cure.walk', 'penetrations']);
    expect(predecessors(draft, 'hookup.set-1')).toEqual(['cable-test.steps', 'rough-inspection']);
    expect(predecessors(draft, 'hookup.set-2')).toEqual(['cable-test.walk', 'rough-inspection']);
    const received = draft.holdPoints.filter((point) => point.readingStage === 'received');
    expect(received.map((point) => [point.phaseKey, point.heatingSetKey])).toEqual([
      ['cable.landing', 'set-1'],
      ['cable.walk', 'set-2'],
    ]);
    expect(draft.hookups).toHaveLength(2);
  });

  it('an unheated walk beside a heated landing waits for no cable', () => {
    const draft = draftOf((entry) => {
      entry.areas[2].heated = false;
      Object.assign(entry.heatingSets[0], { areas: ['landing', 'steps'], heatedFeet: 190 });
    });
    expect(predecessors(draft, 'stone.walk')).toEqual(['base-cure.walk']);
    expect(
      draft.holdPoints.filter((point) => point.phaseKey === 'stone.walk').map((point) => point.key),
    ).toEqual(['stone-delivered']);
  });

  it('a landing without steps has no risers to measure', () => {
    const draft = draftOf((entry) => {
      entry.areas.splice(1, 1);
      Object.assign(entry.heatingSets[0], { areas: ['landing', 'walk'], heatedFeet: 310 });
    });
    expect(draft.holdPoints.map((point) => point.key)).not.toContain('risers');
  });
});

describe('equipment', () => {
  it('is kept from placing until the cure is over, in the same area', () => {
    const holds = draftOf().equipmentHolds;
    expect(holds).toContainEqual({
      pool: 'enclosure',
      quantity: 1,
      from: 'stone.walk',
      until: 'bed-cure.walk',
    });
    expect(holds).toContainEqual({
      pool: 'blanket',
      quantity: 2,
      from: 'footing-pour',
      until: 'footing-cure',
    });
    for (const hold of holds.filter((one) => one.from.includes('.') && one.from !== one.until)) {
      expect(hold.until.split('.')[1]).toBe(hold.from.split('.')[1]);
    }
  });

  it('against the cold is left at home in a warm season', () => {
    expect(expandTemplate(HEATED_ENTRY, checkedEntry(), { cold: false }).equipmentHolds).toEqual([]);
  });

  it('is counted up to whole pieces', () => {
    const holds = draftOf((entry) => (entry.areas[2].lengthFeet = 13)).equipmentHolds;
    expect(holds).toContainEqual({
      pool: 'blanket',
      quantity: 2,
      from: 'stone.walk',
      until: 'bed-cure.walk',
    });
  });
});

describe('any entry', () => {
  const shape = fc.record({
    landing: fc.boolean(),
    flight: fc.boolean(),
    walks: fc.integer({ min: 0, max: 3 }),
    heated: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
    split: fc.boolean(),
  });
  const anyEntry = shape
    .filter((one) => one.landing || one.flight || one.walks > 0)
    .map((one) =>
      checkedEntry((entry) => {
        const [landing, flight, walk] = entry.areas;
        const walks = Array.from({ length: one.walks }, (_, i) => ({
          ...walk,
          key: `walk-${i + 1}`,
          name: `Walk ${i + 1}`,
        }));
        entry.areas = [...(one.landing ? [landing] : []), ...(one.flight ? [flight] : []), ...walks];
        entry.areas.forEach((area: Loose, i: number) => (area.heated = one.heated[i]));
        const heated: string[] = entry.areas
          .filter((area: Loose) => area.heated)
          .map((area: Loose) => area.key);
        const [set] = entry.heatingSets;
        const at = one.split ? 1 : heated.length;
        entry.heatingSets = [heated.slice(0, at), heated.slice(at)]
          .filter((areas) => areas.length > 0)
          .map((areas, i) => ({ ...set, key: `set-${i + 1}`, areas }));
        if (!one.landing && !one.flight) entry.footing = null;
      }),
    );

  it('has keys that are used once, links between phases there are, and no circle', () => {
    fc.assert(
      fc.property(anyEntry, (entry) => {
        const draft = expandTemplate(HEATED_ENTRY, entry);
        const keys = keysOf(draft);
        expect(new Set(keys).size).toBe(keys.length);
        for (const link of draft.links) expect(keys).toEqual(expect.arrayContaining([link.from, link.to]));
        expect(new Set(draft.links.map((link) => `${link.from} ${link.to} ${link.kind}`)).size).toBe(
          draft.links.length,
        );
        expect(findCircle(draft.links)).toBeUndefined();
      }),
    );
  });

  it('has hold points, inspections, equipment and placements of phases there are', () => {
    fc.assert(
      fc.property(anyEntry, (entry) => {
        const draft = expandTemplate(HEATED_ENTRY, entry);
        const keys = keysOf(draft);
        const clearances = draft.clearances.map((clearance) => clearance.key);
        for (const point of draft.holdPoints) {
          expect(keys).toContain(point.phaseKey);
          if (point.kind === 'clearance') expect(clearances).toContain(point.clearanceKey);
          if (point.kind === 'cure') expect(keys).toContain(point.placementPhaseKey);
          if (point.kind === 'reading') expect(point.heatingSetKey).not.toBeNull();
        }
        expect(new Set(draft.holdPoints.map((point) => `${point.phaseKey} ${point.key}`)).size).toBe(
          draft.holdPoints.length,
        );
        expect(new Set(draft.inspections.map((visit) => visit.key)).size).toBe(draft.inspections.length);
        for (const hold of draft.equipmentHolds)
          expect(keys).toEqual(expect.arrayContaining([hold.from, hold.until]));
        for (const placement of draft.placements) {
          expect(keys).toContain(placement.phaseKey);
          expect(placement.sectionInches).toBeGreaterThan(0);
        }
      }),
    );
  });

  it('begins with the tear-out and ends with the hand-over: everything hangs together', () => {
    fc.assert(
      fc.property(anyEntry, (entry) => {
        const draft = expandTemplate(HEATED_ENTRY, entry);
        const starts = draft.phases.filter((phase) => predecessors(draft, phase.key).length === 0);
        const ends = draft.phases.filter((phase) => !draft.links.some((link) => link.from === phase.key));
        expect(starts.map((phase) => phase.key)).toEqual(['demo']);
        expect(ends.map((phase) => phase.key)).toEqual(['hand-over']);
      }),
    );
  });

  it('covers no heated area without a passed test before it', () => {
    fc.assert(
      fc.property(anyEntry, (entry) => {
        const draft = expandTemplate(HEATED_ENTRY, entry);
        for (const area of entry.areas.filter((one) => one.heated)) {
          expect(predecessors(draft, `stone.${area.key}`)).toContain(`cable-test.${area.key}`);
          const gate = draft.holdPoints.find(
            (point) => point.phaseKey === `cable-test.${area.key}` && point.kind === 'reading',
          );
          expect(gate).toMatchObject({ gate: 'finish', readingStage: 'laid', waivable: false });
        }
      }),
    );
  });

  it('is drafted the same way every time, and survives JSON', () => {
    fc.assert(
      fc.property(anyEntry, (entry) => {
        const draft = expandTemplate(HEATED_ENTRY, entry);
        expect(JSON.stringify(expandTemplate(HEATED_ENTRY, entry))).toBe(JSON.stringify(draft));
        expect(JSON.parse(JSON.stringify(draft))).toEqual(draft);
      }),
    );
  });
});
