import { describe, expect, it } from '@jest/globals';
import { expandTemplate } from '../../shared/entry/expand/expand-template.js';
import { judgeHoldPoint } from '../../shared/entry/hold-points/judge-hold-point.js';
import { footingFrostDepth } from '../../shared/entry/rules/footing-frost-depth.js';
import { shallowFooting } from '../../shared/entry/rules/shallow-footing.js';
import { uncutCable } from '../../shared/entry/rules/uncut-cable.js';
import { HEATED_ENTRY } from '../../shared/entry/template/default/heated-entry.js';
import { checkedEntry } from '../../shared/entry/testing/checked-entry.js';
import { inches } from '../../shared/units/length.js';

const itemsOf = (phaseKey: string, key: string) => {
  const draft = expandTemplate(HEATED_ENTRY, checkedEntry());
  const point = draft.holdPoints.find((one) => one.phaseKey === phaseKey && one.key === key);
  if (!point) throw new Error(`no hold point ${key} at ${phaseKey}`);
  return point.items;
};

// The trade's facts, common practice, no source.
describe('facts of the trade', () => {
  it('an entry built as the trade builds it passes every rule', () => {
    const { findings } = expandTemplate(HEATED_ENTRY, checkedEntry());
    expect(findings.filter((finding) => !finding.ok)).toEqual([]);
    expect(new Set(findings.map((finding) => finding.rule))).toEqual(
      new Set([
        'footing-frost-depth',
        'landing-depth',
        'cable-cover',
        'cable-depth',
        'cable-spacing',
        'power-density',
        'riser-height',
        'tread-depth',
        'walk-base',
      ]),
    );
  });

  it('a footing at 47 in under 48 in of frost is refused in the design', () => {
    const entry = checkedEntry((measured) => (measured.footing.bottomInches = 47));
    const finding = expandTemplate(HEATED_ENTRY, entry).findings.find(
      (one) => one.rule === 'footing-frost-depth',
    );
    expect(finding).toMatchObject({ ok: false, measured: '47 in', limit: 'at least 48 in' });
  });

  it('a footing measured at 47 in anywhere keeps the dig from finishing', () => {
    const measured = { 'footing-depth': [48, 48.5, 47], 'spoil-back': 2, 'dig-protected': true };
    const judged = judgeHoldPoint(itemsOf('dig', 'depth'), measured);
    expect(judged.ok).toBe(false);
    expect(judged.findings.find((one) => !one.ok)?.text).toContain('value 3, 47 in is under 48 in');
  });

  it('the same dig with every footing at 48 in may finish', () => {
    const measured = { 'footing-depth': [48, 48.5, 48], 'spoil-back': 2, 'dig-protected': true };
    expect(judgeHoldPoint(itemsOf('dig', 'depth'), measured).ok).toBe(true);
  });

  const layout = { spacing: [3, 3.25, 3.5], setback: 3, uncut: true, 'no-crossing': true, bends: true };

  it('a layout inside the limits may finish', () => {
    expect(judgeHoldPoint(itemsOf('cable.landing', 'layout'), layout).ok).toBe(true);
  });

  it('a spacing of 13 in is refused', () => {
    const judged = judgeHoldPoint(itemsOf('cable.landing', 'layout'), { ...layout, spacing: [3, 13] });
    expect(judged.ok).toBe(false);
    expect(judged.findings.find((one) => !one.ok)).toMatchObject({ rule: 'spacing', source: { mark: 'T' } });
  });

  it('a cut heating cable is refused', () => {
    expect(uncutCable(false).ok).toBe(false);
    expect(uncutCable(true).ok).toBe(true);
    expect(judgeHoldPoint(itemsOf('cable.landing', 'layout'), { ...layout, uncut: false }).ok).toBe(false);
  });

  it('cover of 1.4 in keeps the stone from finishing', () => {
    const items = itemsOf('stone.landing', 'cover');
    expect(judgeHoldPoint(items, { 'cable-cover': [1.5, 1.6] }).ok).toBe(true);
    expect(judgeHoldPoint(items, { 'cable-cover': [1.5, 1.4] }).ok).toBe(false);
  });
});

// Source: IRC R403.3 (published): frost-protected shallow footings are for heated buildings.
describe('IRC R403.3', () => {
  it('refuses a shallow frost-protected footing under an unheated entry', () => {
    expect(shallowFooting(true)).toMatchObject({ ok: false, source: { mark: 'P', text: 'IRC R403.3' } });
    expect(shallowFooting(false).ok).toBe(true);
  });
});

// From memory: IRC R403.1.4.1, footings below the local frost depth.
describe('frost depth', () => {
  const frost = { depth: inches(48), source: 'building department' };

  it.each([
    [47, false],
    [47.99, false],
    [48, true],
    [60, true],
  ])('bottom at %p in under 48 in of frost: %p', (bottom, ok) => {
    expect(footingFrostDepth(inches(bottom), frost).ok).toBe(ok);
  });
});

// Source: IRC R109.1 (published): footing inspected before concrete, rough electrical before it is concealed.
describe('IRC R109.1', () => {
  const draft = expandTemplate(HEATED_ENTRY, checkedEntry());

  it('the footing pour may not start before the footing inspection, which nobody can waive', () => {
    const gate = draft.holdPoints.find((point) => point.inspectionKey === 'footing');
    expect(gate).toMatchObject({
      phaseKey: 'footing-pour',
      gate: 'start',
      kind: 'inspection',
      waivable: false,
    });
  });

  it('no heated area is covered before the rough electrical inspection', () => {
    const gate = draft.holdPoints.find((point) => point.inspectionKey === 'electrical-rough');
    expect(gate).toMatchObject({ phaseKey: 'rough-inspection', gate: 'start', waivable: false });
    for (const area of ['landing', 'steps', 'walk']) {
      expect(draft.links).toContainEqual({
        from: 'rough-inspection',
        to: `stone.${area}`,
        kind: 'finishStart',
        lagMinutes: 0,
        lagIn: 'elapsed',
      });
    }
  });
});
