import { performance } from 'node:perf_hooks';
import { Worker } from 'node:worker_threads';
import type { PlainProject } from '../../shared/schedule/improve/network.js';

/** What the solver came to in its time. */
export interface Solved {
  /** Least latest finish found; null when none was. */
  readonly makespan: number | null;
  readonly proved: boolean;
  readonly seconds: number;
}

interface Message {
  readonly type: string;
  readonly status?: string;
  readonly message?: string;
  readonly output?: { readonly default?: string };
}

/** The project in MiniZinc, the open modelling language: one cumulative constraint a resource, a linear one a link. */
function modelOf({ durations, successors, demands, capacities }: PlainProject): string {
  const horizon = durations.reduce((sum, duration) => sum + duration, 0);
  const links = successors.flatMap((after, i) =>
    after.map((j) => `constraint s[${j + 1}] >= s[${i + 1}] + ${durations[i]};`),
  );
  const resources = capacities.map((capacity, r) => {
    const users = durations.flatMap((duration, i) => (duration > 0 && demands[i]![r]! > 0 ? [i] : []));
    const list = (values: readonly (number | string)[]): string => `[${values.join(', ')}]`;
    return `constraint cumulative(${list(users.map((i) => `s[${i + 1}]`))}, ${list(users.map((i) => durations[i]!))}, ${list(
      users.map((i) => demands[i]![r]!),
    )}, ${capacity});`;
  });
  return `include "cumulative.mzn";
array[1..${durations.length}] of var 0..${horizon}: s;
var 0..${horizon}: finish;
${durations.map((duration, i) => `constraint finish >= s[${i + 1}] + ${duration};`).join('\n')}
${links.join('\n')}
${resources.join('\n')}
solve :: seq_search([int_search(s, smallest, indomain_min), int_search([finish], input_order, indomain_min)]) minimize finish;
output ["\\(finish)"];
`;
}

/**
 * Gives a project to the constraint solver of the registry package `minizinc` (Chuffed, with learning and free search).
 * @throws Error when the solver cannot run
 */
export async function solveByConstraints(project: PlainProject, seconds: number): Promise<Solved> {
  const worker = new Worker(new URL('./constraint-worker.mjs', import.meta.url));
  const begin = (): void =>
    worker.postMessage({
      jsonStream: true,
      files: { 'project.mzn': modelOf(project) },
      args: [
        '--solver',
        'chuffed',
        '-f',
        '-i',
        '--time-limit',
        String(Math.round(seconds * 1000)),
        'project.mzn',
      ],
      outputFiles: null,
    });
  let began = 0;
  let makespan: number | null = null;
  let proved = false;
  try {
    await new Promise<void>((resolve, reject) => {
      // The solver looks at its clock now and then only; ours ends it a little later whatever it does.
      let late: NodeJS.Timeout | undefined;
      worker.once('error', reject);
      worker.on('message', (message: Message) => {
        if (message.type === 'ready' && began === 0) {
          began = performance.now();
          late = setTimeout(resolve, 1000 * seconds + 5000);
          begin();
        } else if (message.type === 'solution') {
          makespan = Number(message.output?.default);
        } else if (message.type === 'status') {
          proved = message.status === 'OPTIMAL_SOLUTION';
        } else if (message.type === 'error') {
          clearTimeout(late);
          reject(new Error(`The constraint solver refused the model: ${message.message}`));
        } else if (message.type === 'exit') {
          clearTimeout(late);
          resolve();
        }
      });
      worker.postMessage({
        wasmURL: 'http://solver.invalid/minizinc.wasm',
        dataURL: 'http://solver.invalid/minizinc.data',
      });
    });
  } finally {
    await worker.terminate();
  }
  return { makespan, proved, seconds: (performance.now() - began) / 1000 };
}
