import { plan } from '../../shared/schedule/plan.js';
import { verify } from '../../shared/schedule/verify/verify.js';
import { portfolio } from '../portfolio/portfolio.js';
import { bench } from '../runner/bench.js';
import { count } from '../runner/option.js';
import { medianOf, once, rounded } from '../runner/timing.js';

/** One pass over a whole portfolio, cold and warm. */
export const replan = bench({
  name: 'replan',
  says: 'one planning pass over an invented portfolio of jobs with sixteen phases each',
  options: { jobs: count('jobs in the portfolio', 2, 200) },
  run({ jobs }) {
    const input = portfolio(jobs);
    const cold = once(() => plan(input));
    const warm = medianOf(Array.from({ length: 15 }, () => once(() => plan(input))));
    const made = plan(input);
    const violations = verify(input, made).length;
    const unplanned = made.phases.filter(({ state }) => state === 'unplanned').length;
    const figures = {
      jobs,
      phases: input.phases.length,
      fullColdMs: rounded(cold),
      fullMs: rounded(warm),
      unplanned,
      violations,
    };
    return {
      figures,
      text: `${input.phases.length} phases: ${figures.fullColdMs} ms cold, ${figures.fullMs} ms warm; ${violations} violations`,
      ok: violations === 0,
    };
  },
});
