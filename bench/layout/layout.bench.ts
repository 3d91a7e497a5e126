import { layCable } from '../../shared/heating/layout/lay-cable.js';
import { randomSite } from '../../shared/heating/layout/testing/random-site.js';
import type { SitePlan } from '../../shared/entry/geometry/site-plan.js';
import { bench } from '../runner/bench.js';
import { count } from '../runner/option.js';
import { medianOf, once, rounded } from '../runner/timing.js';

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

/** Lays a landing at some 3.6 in and says whether every limit was kept. */
const laid = (squareFeet: number): boolean =>
  layCable(landing(squareFeet), ['landing'], { ...CABLE, length: (squareFeet * 144) / 4 }).ok;

/** Cable layouts: a small and a large landing, and random entries; those that no layout keeps every limit in are counted. */
export const layout = bench({
  name: 'layout',
  says: 'cable layouts of 60 and 600 ft², and random entries, each laid with a set in the middle of what fits',
  options: { entries: count('random entries', 1, 20), first: count('seed of the first one', 1, 1) },
  run({ entries, first }, progress) {
    let ok = true;
    const small = medianOf(Array.from({ length: 5 }, () => once(() => (ok = laid(60) && ok))));
    const large = once(() => (ok = laid(600) && ok));
    const failed: number[] = [];
    const times: number[] = [];
    for (let seed = first; seed < first + entries; seed++) {
      const { plan, areas, cable } = randomSite(seed);
      const probe = layCable(plan, areas, { ...cable, length: 1e6 });
      const fits = probe.ok ? null : probe.fits;
      let good = false;
      if (fits) {
        const length = fits.longest - (fits.longest - fits.shortest) / 4;
        times.push(once(() => (good = layCable(plan, areas, { ...cable, length }).ok)));
      }
      if (!good) failed.push(seed);
      if ((seed - first) % 50 === 49) progress(`${seed - first + 1} laid, ${failed.length} without a layout`);
    }
    const figures = {
      small60Ms: rounded(small),
      large600Ms: rounded(large),
      entries,
      medianMs: times.length === 0 ? null : rounded(medianOf(times)),
      failedSeeds: failed,
    };
    return {
      figures,
      text: [
        `60 ft²: ${figures.small60Ms} ms; 600 ft²: ${figures.large600Ms} ms`,
        `${entries} random entries: ${figures.medianMs ?? 'no'} ms in the middle; without a layout: ${failed.length}${failed.length > 0 ? ` (seeds ${failed.join(', ')})` : ''}`,
      ].join('\n'),
      // An entry without a layout was refused with what is wrong, not laid wrongly.
      ok,
    };
  },
});
