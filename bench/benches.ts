import { board } from './board/board.bench.js';
import { cure } from './cure/cure.bench.js';
import { layout } from './layout/layout.bench.js';
import { peers } from './peers/peers.bench.js';
import { planLibrary } from './plan-library/plan-library.bench.js';
import { replan } from './replan/replan.bench.js';
import type { Bench } from './runner/bench.js';

/** Every benchmark that `npm run bench` knows. A new one is a file `<name>.bench.ts` and a line here. */
export const BENCHES: readonly Bench[] = [board, cure, layout, peers, planLibrary, replan];
