import { needsByHookup } from '../../heating/heating.face.js';
import type { Transaction } from '../../platform/database/database.js';
import type { HookupFacts } from './hookup-facts.js';

/** The needs of the hookup that are met, as sentences. */
export async function metNeeds(tx: Transaction, hookup: HookupFacts, now: Date): Promise<string[]> {
  const needs = await needsByHookup(tx, hookup.companyId, [hookup], now);
  return (needs.get(hookup.id)?.hookup ?? []).filter(({ met }) => met).map(({ text }) => text);
}
