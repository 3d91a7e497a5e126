/** Stops the PostgreSQL that the setup started and removes its data. */
export default async function globalTeardown() {
  await globalThis.flagwayPostgres?.stop();
  globalThis.flagwayPostgres = undefined;
  delete process.env.TEST_POSTGRES_URL;
}
