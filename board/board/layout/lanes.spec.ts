import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { type Extent, packLanes } from './lanes.js';

const extents = fc.array(
  fc
    .tuple(fc.integer({ min: 0, max: 500 }), fc.integer({ min: 1, max: 120 }))
    .map(([left, width]): Extent => ({ left, right: left + width })),
  { maxLength: 40 },
);

/** The most extents that cover one point: no packing needs fewer lanes (interval graphs are perfect). */
const depth = (all: readonly Extent[]) =>
  Math.max(
    0,
    ...all.map(({ left }) => all.filter((other) => other.left <= left && left < other.right).length),
  );

describe('packing bars into lanes', () => {
  it('never lets two bars of a lane overlap', () => {
    fc.assert(
      fc.property(extents, (all) => {
        const { lanes } = packLanes(all);
        all.forEach((a, i) =>
          all.forEach((b, j) => {
            if (i < j && lanes[i] === lanes[j]) expect(a.right <= b.left || b.right <= a.left).toBe(true);
          }),
        );
      }),
    );
  });

  it('uses no more lanes than overlap at one point', () => {
    fc.assert(fc.property(extents, (all) => expect(packLanes(all).count).toBe(depth(all))));
  });

  it('gives equal bars equal lanes however often it is asked', () => {
    fc.assert(fc.property(extents, (all) => expect(packLanes(all)).toEqual(packLanes(all))));
  });
});
