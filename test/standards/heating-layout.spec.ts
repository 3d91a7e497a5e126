import { describe, expect, it } from '@jest/globals';
import { judgeLayout } from '../../bench/layout/judge/judge-layout.js';
import type { Piece } from '../../shared/heating/layout/path.js';
import { layCable, type CableLayout } from '../../shared/heating/layout/lay-cable.js';
import { EXAMPLE_CABLE, EXAMPLE_SITE } from '../../shared/heating/layout/testing/example-site.js';
import { fittingLength } from '../../shared/heating/layout/testing/fitting-length.js';
import { randomSite, seeded } from '../../shared/heating/layout/testing/random-site.js';

/*
 * Layouts judged by a general-purpose geometry library from the registry: no crossing, one line, the label's length,
 * bends, spacing, clearances and gaps. The benchmark judges a thousand more.
 */

const layoutOf = (outcome: ReturnType<typeof layCable>): CableLayout => {
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.layout;
};

describe('layouts of random entries', () => {
  it.each(Array.from({ length: 8 }, (_, i) => i + 1))('keeps every limit in entry %i', (seed) => {
    const site = randomSite(seed);
    const length = fittingLength(site, seeded(seed + 1e6));
    expect(judgeLayout(layoutOf(layCable(site.plan, site.areas, { ...site.cable, length })))).toEqual([]);
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
