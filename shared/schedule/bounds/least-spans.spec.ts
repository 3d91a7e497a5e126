import { describe, expect, test } from '@jest/globals';
import type { Link, Phase, PlanInput } from '../model.js';
import { slot } from '../slot.js';
import { cure, inputWith, link, pour, work } from '../spec-input.js';
import { LeastSpans } from './least-spans.js';

function span(part: Partial<PlanInput>, from: string, to: string): number {
  const input = inputWith(part);
  const phase = (id: string): Phase => input.phases.find((one) => one.id === id)!;
  return new LeastSpans(input).toFinish(phase(from), phase(to));
}

/** A pour of 8 slots and a cure of a day, joined as said. */
const joined = (...links: Link[]): Partial<PlanInput> => ({ phases: [pour('a', 8), cure('b', 96)], links });

describe('the least time from start to finish', () => {
  test('of a phase is its own length, with the nights that its hours cannot spare', () => {
    const spans = new LeastSpans(inputWith({}));
    expect(spans.of(cure('x', 300))).toBe(300);
    expect(spans.of(work('x', 32))).toBe(32);
    expect(spans.of(work('x', 40))).toBe(40 + 64);
    expect(spans.of(work('x', 40, { trade: undefined }))).toBe(40);
    expect(spans.of(work('x', 40, { trade: undefined, calendarId: 'workdays' }))).toBe(40 + 64);
    expect(spans.of(work('x', 40, { trade: 'cable' }))).toBe(40);
    expect(spans.of(work('x', 0))).toBe(0);
  });

  test.each<[string, Link, number]>([
    ['finish to start', link('a', 'b'), 8 + 96],
    ['finish to start with a lag', link('a', 'b', 'FS', 12), 8 + 12 + 96],
    ['finish to start with a lead', link('a', 'b', 'FS', -4), 8 - 4 + 96],
    ['start to start', link('a', 'b', 'SS', 4), 4 + 96],
    ['finish to finish', link('a', 'b', 'FF', 100), 8 + 100],
    ['start to finish', link('a', 'b', 'SF', 100), 100],
  ])('over a link from %s', (_kind, one, least) => {
    expect(span(joined(one), 'a', 'b')).toBe(least);
  });

  test('over several ways is the longest of them', () => {
    const phases = [pour('a', 8), cure('b', 96), cure('c', 10), cure('d', 5)];
    const links = [link('a', 'b'), link('b', 'd'), link('a', 'c'), link('c', 'd'), link('a', 'd', 'FF', 20)];
    expect(span({ phases, links }, 'a', 'd')).toBe(8 + 96 + 5);
  });

  test('counts working lags in the hours of who comes next, and knows nothing of leads in working time', () => {
    const phases = [pour('a', 8), pour('b', 4)];
    expect(span({ phases, links: [link('a', 'b', 'FS', 40, 'working')] }, 'a', 'b')).toBe(8 + 40 + 64 + 4);
    expect(span({ phases, links: [link('a', 'b', 'FS', -1, 'working')] }, 'a', 'b')).toBe(-Infinity);
  });

  test('is not known without links, over what has started or is pinned, and round a circle ends', () => {
    expect(span(joined(), 'a', 'b')).toBe(-Infinity);
    for (const facts of [{ actualStart: slot(0) }, { pinnedStart: slot(9) }]) {
      const phases = [pour('a', 8), cure('b', 96, { facts })];
      expect(span({ phases, links: [link('a', 'b')] }, 'a', 'b')).toBe(-Infinity);
    }
    const phases = [pour('a', 8), cure('b', 96), cure('c', 5)];
    const links = [link('a', 'b'), link('b', 'c'), link('c', 'b')];
    expect(span({ phases, links }, 'a', 'c')).toBe(8 + 96 + 5);
  });
});
