import { layCable, type LayoutOutcome } from '../../shared/heating/layout/lay-cable.js';
import { fittingLength } from '../../shared/heating/layout/testing/fitting-length.js';
import { randomSite, seeded } from '../../shared/heating/layout/testing/random-site.js';
import type { SitePlan } from '../../shared/entry/geometry/site-plan.js';
import { bench } from '../runner/bench.js';
import { count } from '../runner/option.js';
import { medianOf, once, rounded } from '../runner/timing.js';
import { judgeLayout } from './judge/judge-layout.js';

const CABLE = { watts: 3000, leastBend: 1, leastSpacing: 3, greatestSpacing: 12, coldLead: 240 };

/** A landing of some square feet, twice as wide as deep, with the sleeve near its left corner. */
function landing(squareFeet: number): SitePlan {
  const depth = Math.sqrt((squareFeet * 144) / 2);
  const corner = (x: number, y: number) => ({ x, y });
  return {
    wall: [corner(-20, 0), corner(2 * depth + 20, 0)],
    penetration: corner(8, 0),
    surfaces: [
      {
        kind: 'landing',
        key: 'landing',
        name: 'Landing',
        outline: [corner(0, 0), corner(2 * depth, 0), corner(2 * depth, depth), corner(0, depth)],
        setback: 3,
        sideSetbacks: {},
        keepOuts: [],
        joints: [],
      },
    ],
  };
}

/** Lays a landing at some 4 in and says whether every limit was kept. */
const laid = (squareFeet: number): boolean =>
  layCable(landing(squareFeet), ['landing'], { ...CABLE, length: (squareFeet * 144) / 4 }).ok;

/** What is run next to the layouts: a set number of distances between places, a hundred thousand by a thousand. */
function beside(): boolean {
  let sum = 0;
  for (let i = 0; i < 100_000; i++) for (let j = 0; j < 1000; j++) sum += Math.sqrt(i * i + j * j);
  return sum > 0;
}

/** Lays a random entry with a set that it takes, and judges the layout; what is wrong with it, in words. */
function judged(seed: number, times: number[]): string[] {
  const site = randomSite(seed);
  const length = fittingLength(site, seeded(seed + 1e6));
  let outcome: LayoutOutcome | null = null;
  times.push(once(() => (outcome = layCable(site.plan, site.areas, { ...site.cable, length }))));
  const found = outcome as unknown as LayoutOutcome;
  return found.ok ? judgeLayout(found.layout) : [found.message];
}

/** Cable layouts: a small and a large landing, and random entries, each judged by a geometry library. */
export const layout = bench({
  name: 'layout',
  says: 'cable layouts of 60 and 600 ft², and of random entries, each judged by a geometry library',
  options: { entries: count('random entries', 1, 100), first: count('seed of the first one', 1, 1) },
  run({ entries, first }, progress) {
    let ok = true;
    laid(60);
    const measured = (run: () => boolean, times: number) =>
      medianOf(Array.from({ length: times }, () => once(() => (ok = run() && ok))));
    const yardstick = measured(beside, 3);
    const small = measured(() => laid(60), 5);
    const large = measured(() => laid(600), 3);
    const failed: { seed: number; faults: string[] }[] = [];
    const times: number[] = [];
    for (let seed = first; seed < first + entries; seed++) {
      const faults = judged(seed, times);
      if (faults.length > 0) failed.push({ seed, faults });
      if ((seed - first) % 50 === 49) progress(`${seed - first + 1} laid, ${failed.length} failing`);
    }
    const figures = {
      yardstickMs: rounded(yardstick),
      small60Ms: rounded(small),
      small60Ratio: rounded(small / yardstick),
      large600Ms: rounded(large),
      large600Ratio: rounded(large / yardstick),
      entries,
      medianMs: rounded(medianOf(times)),
      slowestMs: rounded(Math.max(...times)),
      failing: failed.length,
      failed,
    };
    return {
      figures,
      text: [
        `60 ft²: ${figures.small60Ms} ms, 600 ft²: ${figures.large600Ms} ms; a hundred million distances next to them: ${figures.yardstickMs} ms (ratios ${figures.small60Ratio} and ${figures.large600Ratio})`,
        `${entries} random entries: ${figures.medianMs} ms in the middle, ${figures.slowestMs} ms at most; failing: ${failed.length}`,
        ...failed.map(({ seed, faults }) => `  seed ${seed}: ${faults.join('; ')}`),
      ].join('\n'),
      ok: ok && failed.length === 0,
    };
  },
});
