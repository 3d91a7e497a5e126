import DataLoader from 'dataloader';
import type { Context } from '../context.js';

/**
 * Loads many rows of one request in one query: gives the request's loader of that name, made on first use.
 *
 * @param load takes the distinct keys and returns, for each row found, its key and value. A missing key gives null.
 */
export function batchedOne<V>(
  ctx: Context,
  name: string,
  load: (keys: readonly string[]) => Promise<readonly (readonly [string, V])[]>,
): DataLoader<string, V | null> {
  return existing<V | null>(ctx, name, async (keys) => {
    const found = new Map(await load(keys));
    return keys.map((key) => found.get(key) ?? null);
  });
}

/** As `batchedOne`, for lists: gathers the rows under each key, in the order they came. */
export function batchedMany<V>(
  ctx: Context,
  name: string,
  load: (keys: readonly string[]) => Promise<readonly (readonly [string, V])[]>,
): DataLoader<string, V[]> {
  return existing<V[]>(ctx, name, async (keys) => {
    const found = new Map<string, V[]>(keys.map((key) => [key, []]));
    for (const [key, value] of await load(keys)) found.get(key)?.push(value);
    return keys.map((key) => found.get(key) ?? []);
  });
}

function existing<R>(
  ctx: Context,
  name: string,
  load: (keys: readonly string[]) => Promise<R[]>,
): DataLoader<string, R> {
  const known = ctx.batches.get(name);
  if (known) return known as DataLoader<string, R>;
  const made = new DataLoader<string, R>(load);
  ctx.batches.set(name, made);
  return made;
}
