/** Stops the PostgreSQL of the tests and removes its data. */
export default async function globalTeardown() {
  await globalThis.flagwayPostgres?.stop();
  globalThis.flagwayPostgres = undefined;
}
