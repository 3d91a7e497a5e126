import { layCable } from '../../shared/heating/layout/lay-cable.js';
import { randomSite } from '../../shared/heating/layout/testing/random-site.js';
import type { SitePlan } from '../../shared/entry/geometry/site-plan.js';
import { bench } from '../runner/bench.js';
import { count } from '../runner/option.js';
import { medianOf, once, rounded } from '../runner/timing.js';
import { judgeEntry, type Verdict } from './judge/judge-entry.js';

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
    const times: number[] = [];
    const began = performance.now();
    const verdicts: (Verdict & { readonly seed: number })[] = [];
    for (let seed = first; seed < first + entries; seed++) {
      const verdict = { seed, ...judgeEntry(randomSite(seed), (lay) => times.push(once(lay))) };
      verdicts.push(verdict);
      if (verdict.faults.length > 0) progress(`seed ${seed}, failing: ${verdict.faults.join('; ')}`);
      if ((seed - first) % 50 === 49)
        progress(
          `${verdicts.length} judged, ${verdicts.filter(({ faults }) => faults.length > 0).length} failing`,
        );
    }
    const failed = verdicts.filter(({ faults }) => faults.length > 0);
    const refused = verdicts.filter(({ refusal }) => refusal !== null);
    const figures = {
      yardstickMs: rounded(yardstick),
      small60Ms: rounded(small),
      small60Ratio: rounded(small / yardstick),
      large600Ms: rounded(large),
      large600Ratio: rounded(large / yardstick),
      entries,
      medianMs: rounded(medianOf(times)),
      slowestMs: rounded(Math.max(...times)),
      minutes: rounded((performance.now() - began) / 60_000),
      laid: verdicts.filter(({ faults, refusal }) => faults.length === 0 && refusal === null).length,
      refused: refused.map(({ seed, refusal }) => ({ seed, refusal })),
      failing: failed.length,
      failed: failed.map(({ seed, faults }) => ({ seed, faults })),
    };
    return {
      figures,
      text: [
        `60 ft²: ${figures.small60Ms} ms, 600 ft²: ${figures.large600Ms} ms; a hundred million distances next to them: ${figures.yardstickMs} ms (ratios ${figures.small60Ratio} and ${figures.large600Ratio})`,
        `${entries} random entries, laid and judged in ${figures.minutes} min: ${figures.medianMs} ms to lay one in the middle, ${figures.slowestMs} ms at most`,
        `laid with every limit kept: ${figures.laid}; set refused with the nearest one that fits, laid and judged in its place: ${refused.length}; failing: ${failed.length}`,
        ...refused.map(({ seed, refusal }) => `  seed ${seed}, refused: ${refusal}`),
        ...failed.map(({ seed, faults }) => `  seed ${seed}, failing: ${faults.join('; ')}`),
      ].join('\n'),
      ok: ok && failed.length === 0,
    };
  },
});
