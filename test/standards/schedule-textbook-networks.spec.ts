import { readFileSync } from 'node:fs';
import { describe, expect, test } from '@jest/globals';
import type { LinkKind, PlanInput, PlannedPhase } from '../../shared/schedule/model.js';
import { plan } from '../../shared/schedule/plan.js';
import { slot } from '../../shared/schedule/slot.js';
import {
  chanceBy,
  durationVariance,
  expectedDuration,
  normalBelow,
} from '../../shared/schedule/three-point.js';

type Row = Partial<Record<'dur' | 'ES' | 'EF' | 'LS' | 'LF' | 'TF' | 'FF', number>>;

interface Results {
  readonly duration?: number;
  readonly critical?: readonly string[];
  readonly table?: Readonly<Record<string, Row>>;
}

/** One worked example; its `source` says where it is printed, `provenance` what of it is printed and what is recomputed. */
interface Example {
  readonly id: string;
  readonly kind?: 'PERT';
  readonly source: string;
  readonly provenance: string;
  readonly activities?: Readonly<Record<string, number>>;
  readonly estimates?: Readonly<Record<string, readonly [number, number, number]>>;
  readonly links?: readonly { from: string; to: string; type: LinkKind; lag: number }[];
  readonly path?: readonly string[];
  readonly published: Results & Readonly<Record<string, unknown>>;
  readonly computed: Results & {
    readonly expected?: Readonly<Record<string, number>>;
    readonly variance?: Readonly<Record<string, number>>;
    readonly path_variance?: number;
    readonly probabilities?: Readonly<Record<string, { z: number; p: number }>>;
  };
}

const file = new URL('./data/cpm-networks.json', import.meta.url);
const { examples } = JSON.parse(readFileSync(file, 'utf8')) as { examples: Example[] };

/** Slots a unit of the example's time: three-point means of quarters come out whole in twenty-fourths. */
const PER_UNIT = 24;

function durationsOf(example: Example): Record<string, number> {
  if (example.activities) return { ...example.activities };
  const entries = Object.entries(example.estimates ?? {});
  return Object.fromEntries(entries.map(([id, estimate]) => [id, expectedDuration(threePoint(estimate))]));
}

function threePoint([optimistic, likely, pessimistic]: readonly [number, number, number]) {
  return { optimistic, likely, pessimistic };
}

function networkOf(example: Example, kind: 'work' | 'elapsed'): PlanInput {
  return {
    horizon: 10_000,
    now: slot(0),
    freezeUntil: slot(0),
    calendars: [],
    crews: [],
    pools: [],
    weather: [],
    inspections: [],
    jobs: [{ id: 'job', priority: 0 }],
    phases: Object.entries(durationsOf(example)).map(([id, duration]) => {
      const slots = Math.round(duration * PER_UNIT);
      return {
        id,
        jobId: 'job',
        duration: kind === 'work' ? { kind, slots, mode: 'interruptible' } : { kind, slots },
      };
    }),
    links: (example.links ?? []).map((link, i) => ({
      id: `link-${String(i).padStart(2, '0')}`,
      from: link.from,
      to: link.to,
      kind: link.type,
      lag: link.lag * PER_UNIT,
      lagIn: kind === 'work' ? 'working' : 'elapsed',
    })),
  };
}

function rowOf({ start, finish, totalFloat, freeFloat }: PlannedPhase): Required<Row> {
  const [ES, EF, TF, FF] = [start!, finish!, totalFloat!, freeFloat!].map((slots) => slots / PER_UNIT) as [
    number,
    number,
    number,
    number,
  ];
  return { dur: EF - ES, ES, EF, LS: ES + TF, LF: EF + TF, TF, FF };
}

const networks = examples.filter((example) => example.activities ?? example.estimates);

describe.each(['work', 'elapsed'] as const)('textbook networks counted in %s time', (kind) => {
  test.each(networks.map((example) => [example.id, example] as const))('%s', (_id, example) => {
    const { phases, jobs, conflicts } = plan(networkOf(example, kind));
    // Printed dates are exact for whole days and given to two decimals for three-point means; computed ones have four decimals.
    const decimals = {
      published: example.kind === 'PERT' ? 1.5 : 9,
      computed: example.kind === 'PERT' ? 3 : 9,
    };
    expect(conflicts).toEqual([]);
    for (const judge of ['published', 'computed'] as const) {
      const results = example[judge];
      if (results.duration !== undefined) {
        expect(jobs[0]!.finish! / PER_UNIT).toBeCloseTo(results.duration, decimals[judge]);
      }
      for (const [id, expected] of Object.entries(results.table ?? {})) {
        const row = rowOf(phases.find((phase) => phase.id === id)!);
        for (const [name, value] of Object.entries(expected)) {
          const actual = row[name as keyof Row];
          expect([id, name, Math.abs(actual - value) < 10 ** -decimals[judge]]).toEqual([id, name, true]);
        }
      }
      if (results.critical) {
        const critical = phases.filter((phase) => phase.critical).map((phase) => phase.id);
        expect(critical).toEqual([...results.critical].sort());
      }
    }
  });
});

test('every example carries its source and what of it is printed', () => {
  expect(networks.length).toBe(16);
  for (const { source, provenance } of examples) {
    expect(source.length).toBeGreaterThan(5);
    expect(provenance.length).toBeGreaterThan(5);
  }
});

const pert = examples.filter((example) => example.kind === 'PERT' && example.estimates);

test.each(pert.map((example) => [example.id, example] as const))(
  'three-point figures of %s',
  (_id, example) => {
    const { estimates, path, computed } = example;
    for (const [id, estimate] of Object.entries(estimates!)) {
      expect(expectedDuration(threePoint(estimate))).toBeCloseTo(computed.expected![id]!, 3);
      expect(durationVariance(threePoint(estimate))).toBeCloseTo(computed.variance![id]!, 3);
    }
    const chain = path!.map((id) => threePoint(estimates![id]!));
    expect(chain.reduce((sum, one) => sum + durationVariance(one), 0)).toBeCloseTo(
      computed.path_variance!,
      3,
    );
    for (const [deadline, { p }] of Object.entries(computed.probabilities!)) {
      expect(chanceBy(Number(deadline), chain)).toBeCloseTo(p, 3.8);
    }
  },
);

test('printed probabilities: read from tables at a z of two decimals, hence the tolerance', () => {
  const chainOf = (id: string) => {
    const example = pert.find((one) => one.id === id)!;
    return example.path!.map((name) => threePoint(example.estimates![name]!));
  };
  // Anderson, Sweeney, Williams et al., ch. 9: P(T <= 20) = 0.9656 (the figure from memory, recomputed 0.9655).
  expect(Math.abs(chanceBy(20, chainOf('pert-porta-vac')) - 0.9656)).toBeLessThan(3e-4);
  // Taylor, Introduction to Management Science: P(x <= 28) = .9633 printed, 0.9632 computed.
  expect(Math.abs(chanceBy(28, chainOf('pert-taylor-7')) - 0.9633)).toBeLessThan(3e-4);
});

test('printed values of the normal distribution', () => {
  // LPU e-book DCAP601 p. 157: z = -0.6 gives 0.274; z = 1 gives 0.84134.
  expect(normalBelow(-0.6)).toBeCloseTo(0.274, 3);
  expect(normalBelow(1)).toBeCloseTo(0.84134, 5);
  // Tables of the normal distribution, from memory: 1.96 gives 0.9750021, 3 gives 0.9986501020, 4 gives 0.9999683288.
  expect(normalBelow(1.96)).toBeCloseTo(0.9750021, 7);
  expect(normalBelow(3)).toBeCloseTo(0.998650102, 9);
  expect(normalBelow(4)).toBeCloseTo(0.9999683288, 10);
  expect(normalBelow(2.9999999)).toBeCloseTo(normalBelow(3.0000001), 8);
  expect(normalBelow(-9)).toBe(0);
});
