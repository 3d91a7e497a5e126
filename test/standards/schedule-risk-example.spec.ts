import { readFileSync } from 'node:fs';
import { describe, expect, test } from '@jest/globals';
import type { PlanInput } from '../../shared/schedule/model.js';
import { Draws } from '../../shared/schedule/risk/draws.js';
import { chanceOf } from '../../shared/schedule/risk/precision.js';
import { risk, type Risk } from '../../shared/schedule/risk/risk.js';
import { slot } from '../../shared/schedule/slot.js';
import { durationVariance, expectedDuration, type ThreePoint } from '../../shared/schedule/three-point.js';

/** Worked three-point examples as printed; their sources and what of them is printed stand in the file. */
interface Example {
  readonly id: string;
  readonly estimates?: Readonly<Record<string, readonly [number, number, number]>>;
  readonly path?: readonly string[];
}

const file = new URL('./data/cpm-networks.json', import.meta.url);
const { examples } = JSON.parse(readFileSync(file, 'utf8')) as { examples: Example[] };

/** Slots a week of the examples. */
const WEEK = 96;
const SAMPLES = 300;
/** Two-sided 95 % point of the normal distribution. */
const Z = 1.96;

/** The chain whose sum the books look at, longest path by expected durations. */
function chainOf(id: string): ReadonlyMap<string, ThreePoint> {
  const { path, estimates } = examples.find((one) => one.id === id)!;
  return new Map(
    path!.map((name) => {
      const [optimistic, likely, pessimistic] = estimates![name]!;
      return [name, { optimistic, likely, pessimistic }];
    }),
  );
}

/** The chain drawn through the planning engine, with a due date in weeks. */
function drawn(chain: ReadonlyMap<string, ThreePoint>, due: number, seed: number): Risk {
  const ids = [...chain.keys()];
  const input: PlanInput = {
    horizon: 100 * WEEK,
    now: slot(0),
    freezeUntil: slot(0),
    calendars: [],
    crews: [],
    pools: [],
    weather: [],
    inspections: [],
    jobs: [{ id: 'job', priority: 0, due: slot(due * WEEK) }],
    phases: ids.map((id) => {
      const slots = Math.round(expectedDuration(chain.get(id)!) * WEEK);
      return { id, jobId: 'job', duration: { kind: 'elapsed', slots } };
    }),
    links: ids.slice(1).map((to, i) => {
      return { id: `to ${to}`, from: ids[i]!, to, kind: 'FS', lag: 0, lagIn: 'elapsed' };
    }),
  };
  const durations = Object.fromEntries(
    [...chain].map(([id, { optimistic, likely, pessimistic }]) => [
      id,
      { optimistic: optimistic * WEEK, likely: likely * WEEK, pessimistic: pessimistic * WEEK },
    ]),
  );
  return risk(input, { durations, companyShare: 0, jobShare: 0 }, { seed, samples: SAMPLES });
}

/** Share of each whole number of slots in a beta distribution xᵖ(1 − x)ᑫ over the range of an estimate, summed in small steps. */
function sharesOf({ optimistic: a, likely: m, pessimistic: b }: ThreePoint): Map<number, number> {
  const [p, q] = [(4 * (m - a)) / (b - a), (4 * (b - m)) / (b - a)];
  const steps = Math.round((b - a) * WEEK) * 20;
  const shares = new Map<number, number>();
  let all = 0;
  for (let i = 0; i < steps; i++) {
    const x = (i + 0.5) / steps;
    const share = x ** p * (1 - x) ** q;
    const at = Math.round((a + x * (b - a)) * WEEK);
    shares.set(at, (shares.get(at) ?? 0) + share);
    all += share;
  }
  return new Map([...shares].map(([at, share]) => [at, share / all]));
}

/** The sum of a chain of independent durations, worked out exactly: its mean, deviation, and the share up to a slot. */
function exactSum(chain: ReadonlyMap<string, ThreePoint>) {
  let sum = new Map([[0, 1]]);
  for (const estimate of chain.values()) {
    const next = new Map<number, number>();
    for (const [at, share] of sharesOf(estimate)) {
      for (const [before, other] of sum) next.set(before + at, (next.get(before + at) ?? 0) + share * other);
    }
    sum = next;
  }
  const mean = [...sum].reduce((total, [at, share]) => total + at * share, 0);
  const variance = [...sum].reduce((total, [at, share]) => total + (at - mean) ** 2 * share, 0);
  const upTo = (slots: number): number =>
    [...sum].reduce((total, [at, share]) => total + (at <= slots ? share : 0), 0);
  return { mean: mean / WEEK, deviation: Math.sqrt(variance) / WEEK, upTo };
}

// Taylor, Introduction to Management Science: expected 24 weeks and P(x <= 28) = .9633, both printed.
// Anderson, Sweeney, Williams et al., ch. 9: expected 17 weeks printed; P(T <= 20) = 0.9656 from memory, recomputed 0.9655.
describe.each([
  ['pert-taylor-7', 24, 28, 0.9633],
  ['pert-porta-vac', 17, 20, 0.9656],
] as const)('%s: expected %d weeks, and the chance of %d weeks %d', (id, expected, deadline, chance) => {
  const chain = chainOf(id);
  const exact = exactSum(chain);

  test("drawn by the book's own assumption, normal with the classical variance, 95 of 100 intervals hold the printed chance, seeds 1 to 100", () => {
    const missed: { seed: number; low: number; high: number }[] = [];
    for (let seed = 1; seed <= 100; seed++) {
      let hits = 0;
      for (let sample = 0; sample < 1000; sample++) {
        const draws = new Draws(seed, sample);
        let sum = 0;
        for (const [name, one] of chain)
          sum += expectedDuration(one) + Math.sqrt(durationVariance(one)) * draws.normal(name);
        if (sum <= deadline) hits++;
      }
      const { low, high } = chanceOf(hits, 1000);
      if (chance < low || chance > high) missed.push({ seed, low, high });
    }
    // Five are expected to miss; more than eleven of a hundred would come about once in 250 times.
    expect(missed.slice(11)).toEqual([]);
  });

  describe('drawn through the plan with seeds 1 to 30', () => {
    const runs = Array.from({ length: 30 }, (_, i) => ({
      seed: i + 1,
      job: drawn(chain, deadline, i + 1).jobs[0]!,
    }));

    test('the mean finish is the printed expected time within its precision', () => {
      expect(runs[0]!.job.planned! / WEEK).toBe(expected);
      const mean = runs.reduce((sum, { job }) => sum + job.causes[0]!.slots / WEEK, 0) / runs.length;
      expect(Math.abs(mean)).toBeLessThan((Z * exact.deviation) / Math.sqrt(SAMPLES * runs.length));
    });

    // Of thirty intervals with 95 % confidence more than five miss once in 300 times.
    test('the exact chance of the sum of betas lies in all but a few of the intervals', () => {
      const kept = exact.upTo(deadline * WEEK);
      const missed = runs.filter(({ job }) => kept < job.dueKept!.low || kept > job.dueKept!.high);
      expect(missed.map(({ seed, job }) => ({ seed, kept, ...job.dueKept })).slice(5)).toEqual([]);
    });

    test('so does its median', () => {
      const missed = runs.filter(
        ({ job: { half } }) => exact.upTo(half.low! - 1) > 0.5 || exact.upTo(half.high!) < 0.5,
      );
      expect(missed.map(({ seed, job }) => ({ seed, ...job.half })).slice(5)).toEqual([]);
    });
  });

  test('the printed chance flatters: betas reach further out than a normal sum with the classical variance', () => {
    expect(exact.mean).toBeCloseTo(expected, 2);
    expect(exact.upTo(deadline * WEEK)).toBeLessThan(chance);
    expect(exact.upTo(deadline * WEEK)).toBeGreaterThan(chance - 0.025);
  });
});
