import 'reflect-metadata';
import pg from 'pg';
import { loadDemo } from './demo/demo.js';

/* Loads the demo into an empty database; a database with any company in it is left alone. */

const client = new pg.Client({ connectionString: process.env['DATABASE_URL'] });
await client.connect();
const { rows } = await client.query<{ companies: string }>('select count(*) as companies from "Company"');
await client.end();

if (rows[0]?.companies === '0') {
  process.stdout.write('Loading the demo: an invented company works six jobs up to today.\n');
  await loadDemo(new Date(), (text) => process.stdout.write(`  ${text}\n`));
}
process.exit(0);
