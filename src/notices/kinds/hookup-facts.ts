import type { Transaction } from '../../platform/database/database.js';

/** The hookup that a happening names, with what its notices tell; null when there is none. */
export function hookupOf(tx: Transaction, companyId: string, hookupId: unknown) {
  if (typeof hookupId !== 'string') return Promise.resolve(null);
  return tx.hookup.findFirst({
    where: { id: hookupId, companyId },
    include: {
      job: { include: { site: true } },
      heatingSet: {
        include: {
          readings: { orderBy: { at: 'asc' } },
          areas: { orderBy: { position: 'asc' }, include: { area: true } },
        },
      },
    },
  });
}

/** A hookup as `hookupOf` reads it. */
export type HookupFacts = NonNullable<Awaited<ReturnType<typeof hookupOf>>>;
