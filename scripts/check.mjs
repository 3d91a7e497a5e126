import { bundle } from './check/bundle.mjs';
import { houseNumbers } from './check/house-numbers.mjs';
import { nodeStep } from './check/step.mjs';
import { words } from './check/words.mjs';
import { prepare, say } from './house/prepare.mjs';
import { tell } from './house/tell.mjs';

/*
 * npm run check             everything that can be said about the code without running its tests
 * npm run check -- types    one step
 */

const bin = (path) => `node_modules/${path}`;

const STEPS = [
  { name: 'types', run: () => nodeStep(bin('typescript/bin/tsc'), '--noEmit', '-p', 'tsconfig.json') },
  { name: 'lint', run: () => nodeStep(bin('eslint/bin/eslint.js'), '.', '--max-warnings', '0') },
  {
    name: 'format',
    run: () => nodeStep(bin('prettier/bin/prettier.cjs'), '--check', '--log-level', 'warn', '.'),
  },
  {
    name: 'exports',
    run: () => nodeStep(bin('knip/bin/knip.js'), '--no-progress', '--treat-config-hints-as-errors'),
  },
  { name: 'schema', run: () => nodeStep('--enable-source-maps', 'dist/src/emit-schema.js', '--check') },
  { name: 'documents', run: () => nodeStep('--import', 'tsx', 'scripts/client-documents.ts', '--check') },
  { name: 'migrations', run: () => nodeStep('--import', 'tsx', 'scripts/migrate/cli.ts', 'check') },
  { name: 'bundle', run: bundle, always: true },
  { name: 'house', run: houseNumbers, always: true },
  { name: 'words', run: words },
];

const wanted = process.argv.slice(2);
const steps = wanted.length > 0 ? STEPS.filter(({ name }) => wanted.includes(name)) : STEPS;

await tell(async () => {
  if (steps.length === 0) throw new Error(`Say which of ${STEPS.map(({ name }) => name).join(', ')}.`);
  await prepare({ upTo: 'compile' });
});

/** Runs the steps two at a time, in their order. */
async function runSteps() {
  const results = [];
  const waiting = [...steps];
  const worker = async () => {
    for (let step = waiting.shift(); step; step = waiting.shift()) {
      const started = performance.now();
      const { ok, output } = await step.run();
      results.push(ok);
      say(`${ok ? 'ok  ' : 'FAIL'} ${step.name} (${((performance.now() - started) / 1000).toFixed(1)} s)`);
      if (output && (!ok || step.always)) say(output.replace(/^/gm, '     '));
    }
  };
  await Promise.all([worker(), worker()]);
  return results;
}

const results = await runSteps();
const failed = results.filter((ok) => !ok).length;
say(`\n${results.length - failed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
