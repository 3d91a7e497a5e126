import pg from 'pg';
import { throwawayPostgres } from '../postgres/throwaway.js';

/** Gives the work an empty database on a server that is thrown away afterwards. */
export async function withScratchDatabase<T>(work: (url: string) => Promise<T>): Promise<T> {
  const server = await throwawayPostgres();
  try {
    const admin = new pg.Client({ connectionString: `${server.url}/postgres` });
    await admin.connect();
    await admin.query('create database scratch');
    await admin.end();
    return await work(`${server.url}/scratch`);
  } finally {
    await server.stop();
  }
}
