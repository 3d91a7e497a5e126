import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { type Arrow, linkPath } from './link-path.js';

const arrows = (...pairs: string[]): Arrow[] => pairs.map((pair) => ({ fromId: pair[0]!, toId: pair[1]! }));

describe('the way along links', () => {
  it('is the shortest one, both ends included', () => {
    expect(linkPath(arrows('ab', 'bc', 'cd', 'ac'), 'a', 'd')).toEqual(['a', 'c', 'd']);
  });

  it('is the phase alone from a phase to itself', () => {
    expect(linkPath(arrows('ab'), 'a', 'a')).toEqual(['a']);
  });

  it('is none against the direction of links', () => {
    expect(linkPath(arrows('ab', 'bc'), 'c', 'a')).toBeNull();
  });

  it('ends even where links already run in a circle', () => {
    expect(linkPath(arrows('ab', 'ba', 'bc'), 'a', 'd')).toBeNull();
  });

  it('always follows links, and exists exactly when stepping on and on reaches the end', () => {
    const node = fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f');
    const links = fc.array(fc.record({ fromId: node, toId: node }), { maxLength: 14 });
    fc.assert(
      fc.property(links, node, node, (all, from, to) => {
        const way = linkPath(all, from, to);
        const reached = new Set([from]);
        for (let round = 0; round < 6; round += 1) {
          for (const { fromId, toId } of all) if (reached.has(fromId)) reached.add(toId);
        }
        expect(way !== null).toBe(reached.has(to));
        way?.slice(1).forEach((step, index) => {
          expect(all).toContainEqual({ fromId: way[index], toId: step });
        });
        expect(way?.[0] ?? from).toBe(from);
        expect(way?.at(-1) ?? to).toBe(to);
      }),
    );
  });
});
