import { describe, expect, it } from '@jest/globals';
import { layCable } from '../heating/layout/lay-cable.js';
import { EXAMPLE_CABLE, EXAMPLE_SITE } from '../heating/layout/testing/example-site.js';
import { cablePlan } from './cable-plan.js';
import { cableTrace } from './cable-trace.js';
import { entrySection, type SectionFacts } from './entry-section.js';
import { sayInches } from './say-inches.js';
import { spacingMarks } from './spacing-marks.js';
import { drawing, element, label, num } from './svg.js';

const SECTION: SectionFacts = {
  landing: 60,
  riserCount: 2,
  risers: [7.25, 7.5],
  tread: 12,
  nosing: 1,
  bed: 1,
  stone: 1.5,
  walkBase: 4,
  footing: { width: 18, thickness: 10, bottom: 50 },
  frostDepth: 48,
  cableSpacing: 3,
};

describe('lengths on drawings', () => {
  it.each([
    [7.25, '7¼ in'],
    [0.125, '⅛ in'],
    [0, '0 in'],
    [12, '12 in'],
    [119.9, '119⅞ in'],
    [120, '10 ft 0 in'],
    [132.5, '11 ft 0½ in'],
    [-3, '−3 in'],
  ])('%p in is said %p', (length, said) => expect(sayInches(length)).toBe(said));
});

describe('the sheet', () => {
  it('prints to scale: inches of the real thing over the scale are inches of paper', () => {
    const svg = drawing({ title: 'A & B', x: -6, y: 0, width: 144, height: 72, scale: 12 }, '');
    expect(svg).toContain('width="12in" height="6in" viewBox="-6 0 144 72"');
    expect(svg).toContain('<title>A &amp; B</title>');
  });

  it('escapes whatever a text holds', () => {
    expect(label(0, 0, '<b>"&')).toBe('<text x="0" y="0">&lt;b&gt;&quot;&amp;</text>');
    expect(element('g', { id: 'a"b' })).toBe('<g id="a&quot;b"/>');
  });

  it('writes no exponent and no negative nothing', () => {
    expect([num(-0.00001), num(1e-9), num(2.0004)]).toEqual(['0', '0', '2']);
  });
});

describe('the section', () => {
  const svg = entrySection(SECTION, 12);

  it('has every finished riser with its own height, and the footing against frost', () => {
    for (const text of ['>7¼ in<', '>7½ in<', '>50 in<', '>frost 48 in<', '>stone 1½ in<'])
      expect(svg).toContain(text);
  });

  it('cuts every material', () => {
    for (const material of ['masonry', 'mortar', 'stone', 'concrete', 'earth'])
      expect(svg).toContain(`fill="url(#cut-${material})"`);
  });

  it('draws the stone on top at the finished height, standing out by the nosing', () => {
    // The landing: 7.25 + 7.5 in up, 60 in and the nosing of 1 in out.
    expect(svg).toContain('<rect x="0" y="-14.75" width="61" height="1.5" fill="url(#cut-stone)"');
  });

  it('has no cable where nothing is heated', () => {
    expect(entrySection({ ...SECTION, cableSpacing: null }, 12)).not.toContain('<circle');
    expect(svg).toContain('<circle');
  });

  it('refuses heights that are not as many as the risers', () => {
    expect(() => entrySection({ ...SECTION, risers: [7] }, 12)).toThrow(
      '2 risers need as many heights, got 1',
    );
  });
});

describe('the plan of the example entry', () => {
  const outcome = layCable(EXAMPLE_SITE, ['landing', 'steps', 'walk'], EXAMPLE_CABLE);
  if (!outcome.ok) throw new Error(outcome.message);
  const svg = cablePlan(EXAMPLE_SITE, outcome.layout, 18);

  it('says length, spacing, cautions, and what the measures of areas are', () => {
    for (const text of [
      'Heating cable 350 ft, uncut',
      '>11 ft 0 in<',
      '>60 in<',
      '>12 in<',
      '48 in wide',
      'sensor',
      'cold joint',
    ])
      expect(svg).toContain(text);
    expect(svg).toContain('Never cut or cross the heating cable');
  });

  it('draws the cable as long as the path but for what goes down', () => {
    const d = /class="cable" d="([^"]+)"/.exec(svg)![1]!;
    let [length, x, y] = [0, NaN, NaN];
    for (const [, kind, rest] of d.matchAll(/([MLA])([^MLA]+)/g)) {
      const values = rest!.trim().split(' ').map(Number);
      const [nx, ny] = values.slice(-2) as [number, number];
      const chord = Math.hypot(nx - x, ny - y);
      if (kind === 'L') length += chord;
      if (kind === 'A') length += 2 * values[0]! * Math.asin(Math.min(1, chord / (2 * values[0]!)));
      [x, y] = [nx, ny];
    }
    const drop = 2 * 7.25;
    expect(length).toBeGreaterThan(EXAMPLE_CABLE.length - drop - 2);
    expect(length).toBeLessThan(EXAMPLE_CABLE.length);
  });

  it('marks spacings that a tape finds again: the distance between two straight runs', () => {
    const marks = spacingMarks(outcome.layout.pieces, 12);
    expect(marks.length).toBeGreaterThanOrEqual(3);
    for (const { a, b } of marks) {
      expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(2.98);
      expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(12);
    }
  });

  it('is empty of a cable when there is none', () => expect(cableTrace([])).toBe(''));
});
