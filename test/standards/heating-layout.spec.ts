import { describe, expect, it } from '@jest/globals';
import { judgeEntry } from '../../bench/layout/judge/judge-entry.js';
import { judgeLayout } from '../../bench/layout/judge/judge-layout.js';
import type { SitePlan } from '../../shared/entry/geometry/site-plan.js';
import type { Piece } from '../../shared/heating/layout/path.js';
import { layCable, type CableLayout } from '../../shared/heating/layout/lay-cable.js';
import { EXAMPLE_CABLE, EXAMPLE_SITE } from '../../shared/heating/layout/testing/example-site.js';
import { randomSite } from '../../shared/heating/layout/testing/random-site.js';

/*
 * Layouts judged by a general-purpose geometry library from the registry: no crossing, one line, the label's length,
 * bends, spacing, clearances and gaps. The benchmark judges a thousand more.
 */

const layoutOf = (outcome: ReturnType<typeof layCable>): CableLayout => {
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.layout;
};

describe('layouts of random entries', () => {
  const lay = (run: () => void) => run();

  it.each(Array.from({ length: 8 }, (_, i) => i + 1))('keeps every limit in entry %i', (seed) => {
    expect(judgeEntry(randomSite(seed), lay)).toEqual({ faults: [], refusal: null });
  });

  it('refuses a set that is too long or too short by how much, and lays the one that it says fits', () => {
    const site = randomSite(4);
    for (const [part, words] of [
      [2, /^the set is \d+ ft too long at the closest spacing .* fits/],
      [0.2, /^the set is \d+ ft too short .* fits/],
    ] as const) {
      const cable = { ...site.cable, length: Math.round((site.cable.length * part) / 12) * 12 };
      const { faults, refusal } = judgeEntry({ ...site, cable }, lay);
      expect(faults).toEqual([]);
      expect(refusal).toMatch(words);
    }
  });

  it.each([-90, -45, 45, 90])('keeps every limit on a walk with a bend of %i°', (degrees) => {
    const turn = (degrees * Math.PI) / 180;
    const bend = { x: 60, y: 80 };
    const plan: SitePlan = {
      wall: [
        { x: 0, y: 0 },
        { x: 120, y: 0 },
      ],
      penetration: { x: 50, y: 0 },
      surfaces: [
        {
          kind: 'walk',
          key: 'walk',
          name: 'Walk',
          line: [
            { at: { x: 60, y: 0 }, width: 48 },
            { at: bend, width: 48 },
            { at: { x: bend.x + 90 * Math.sin(turn), y: bend.y + 90 * Math.cos(turn) }, width: 48 },
          ],
          setback: 3,
          keepOuts: [],
          joints: [],
        },
      ],
    };
    // 48 in by some 170 in at about 4 in.
    const cable = { ...EXAMPLE_CABLE, length: 170 * 12, watts: 2040 };
    expect(judgeEntry({ plan, areas: ['walk'], cable }, lay)).toEqual({ faults: [], refusal: null });
  });
});

describe("the trade's example: a landing of 5 by 11 ft, its first step and a walk (common practice, no source)", () => {
  const layout = layoutOf(layCable(EXAMPLE_SITE, ['landing', 'steps', 'walk'], EXAMPLE_CABLE));

  it('passes the judge', () => expect(judgeLayout(layout)).toEqual([]));

  it('is laid at 3 in or just above', () => {
    expect(layout.measure.closest).toBeGreaterThanOrEqual(3);
    expect(layout.measure.closest).toBeLessThan(3.5);
  });

  it('is seen at fault with a wider bend, spacing or label than it was laid for, or a narrower greatest spacing', () => {
    const as = (cable: Partial<CableLayout['cable']>) =>
      judgeLayout({ ...layout, cable: { ...layout.cable, ...cable } }).join('; ');
    expect(as({ leastBend: 1.8 })).toMatch(/a bend of/);
    expect(as({ leastSpacing: 3.6 })).toMatch(/in apart/);
    expect(as({ length: layout.cable.length * 1.01 })).toMatch(/length off/);
    expect(as({ greatestSpacing: 3 })).toMatch(/a gap of/);
  });

  it('is seen at fault with a post in its way, or a wider setback', () => {
    const with_ = (change: (field: CableLayout['chain']['fields'][number]) => object) =>
      judgeLayout({
        ...layout,
        chain: {
          ...layout.chain,
          fields: layout.chain.fields.map((field) => ({ ...field, ...change(field) })),
        },
      }).join('; ');
    const post = { kind: 'round', name: 'post', centre: { x: 60, y: 30 }, radius: 2, clearance: 2 } as const;
    expect(with_(() => ({ keepOuts: [post] }))).toMatch(/from post in landing/);
    expect(with_(({ sides }) => ({ sides: sides.map((side) => ({ ...side, setback: 6 })) }))).toMatch(
      /from a side/,
    );
  });

  it('is seen at fault when the cable is led back over itself, or has a piece missing', () => {
    const last = layout.pieces[layout.pieces.length - 1]!.to;
    const back: Piece = { kind: 'straight', from: last, to: { ...last, y: last.y - 40 } };
    const across: Piece = {
      kind: 'straight',
      from: back.to,
      to: { ...back.to, x: back.to.x > 66 ? 47 : 85 },
    };
    expect(judgeLayout({ ...layout, pieces: [...layout.pieces, back, across] })).toContain('crosses itself');
    const gone = layout.pieces.filter((_, i) => i !== 5);
    expect(judgeLayout({ ...layout, pieces: gone })).toContain('the path has a break');
  });
});
