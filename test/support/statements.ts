import pg from 'pg';

/** Text of a statement given to the driver, however it was given. */
const textOf = (statement: unknown): string =>
  typeof statement === 'string' ? statement : String((statement as { text?: string } | null)?.text ?? '');

/** Runs something and gives the SQL that this process sent meanwhile, transaction control left out. */
export async function statementsOf(work: () => Promise<unknown>): Promise<string[]> {
  const { prototype } = pg.Client;
  const original = prototype.query;
  const seen: string[] = [];
  prototype.query = function (this: pg.Client, ...args: unknown[]) {
    const text = textOf(args[0]);
    if (!/^\s*(begin|commit|rollback|set transaction)/i.test(text)) seen.push(text);
    return (original as (...all: unknown[]) => unknown).apply(this, args);
  } as typeof original;
  try {
    await work();
  } finally {
    prototype.query = original;
  }
  return seen;
}
