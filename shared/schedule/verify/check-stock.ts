import type { Book } from './book.js';
import { violation, type Violation } from './violation.js';

/** No pool lends more than it has; what waits for a phase without a place stays out for good. */
export function checkStock(book: Book): Violation[] {
  const found: Violation[] = [];
  for (const pool of book.input.pools) {
    const loans = [...book.placed()].flatMap(({ phase, at }) =>
      (phase.holds ?? [])
        .filter((hold) => hold.poolId === pool.id)
        .map((hold) => {
          const until = hold.untilPhaseId === undefined ? at : book.planned.get(hold.untilPhaseId);
          return {
            from: at.start,
            to: Math.max(at.finish, until?.finish ?? Infinity),
            quantity: hold.quantity,
          };
        }),
    );
    for (const time of new Set(loans.map((loan) => loan.from))) {
      const out = loans.filter((loan) => loan.from <= time && time < loan.to);
      const sum = out.reduce((total, loan) => total + loan.quantity, 0);
      const owned = book.says('poolOverdrawn', (c) => c.poolId === pool.id && c.from <= time && time < c.to);
      if (sum > pool.quantity && !owned) {
        found.push(violation('stock', pool.id, `${sum} of ${pool.quantity} are out at ${time}`));
      }
    }
  }
  return found;
}
