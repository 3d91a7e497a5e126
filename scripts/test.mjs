import { prepare, say } from './house/prepare.mjs';
import { tell } from './house/tell.mjs';
import { runTier } from './test/run-tier.mjs';
import { demandProgram } from './test/system-program.mjs';
import { TIERS } from './test/tiers.mjs';

/*
 * npm test                          every tier, from a fresh clone
 * npm test -- core standards        some tiers
 * npm test -- service people        one tier, narrowed to paths that hold "people"
 */

const given = process.argv.slice(2);
const named = TIERS.filter((tier) => given.includes(tier.name));
const patterns = given.filter((word) => !TIERS.some((tier) => tier.name === word));
const tiers = named.length > 0 ? named : TIERS;

await tell(() => prepare({ upTo: 'generate' }));

const totals = { passed: 0, failed: 0 };
const lines = [];
for (const tier of tiers) {
  say(`\n== ${tier.name}`);
  let counts;
  try {
    for (const program of tier.needs) {
      const path = demandProgram(program, say);
      if (program === 'chromium') process.env.CHROMIUM_PATH = path;
    }
    if (tier.built) await prepare();
    counts = await runTier(tier, patterns);
  } catch (error) {
    say(error.message);
    counts = { passed: 0, failed: 1 };
  }
  totals.passed += counts.passed;
  totals.failed += counts.failed;
  lines.push(`${tier.name.padEnd(10)} ${counts.passed} passed, ${counts.failed} failed`);
}
say(`\n${lines.join('\n')}\n\n${totals.passed} passed, ${totals.failed} failed`);
process.exit(totals.failed === 0 ? 0 : 1);
