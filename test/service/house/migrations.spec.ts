import { randomUUID } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { migrationProject, type MigrationProject } from '../../support/migration-project.js';

const CREWS = 'create table "Crew" ("id" integer not null, constraint "Crew_pkey" primary key ("id"));';
const CREW_MODEL = 'model Crew {\n  id Int @id\n}\n';

// A body with semicolons and quotes, as triggers have.
const TRIGGER = `
create function crew_is_final() returns trigger language plpgsql as $$
begin
  raise exception 'A crew is; it does not become.';
end;
$$;
create trigger crew_is_final before update on "Crew" for each row execute function crew_is_final();
alter table "Crew" add constraint "Crew_positive" check ("id" > 0);
create extension if not exists btree_gist;
alter table "Crew" add constraint "Crew_once" exclude using gist ("id" with =);
`;

describe('migrations', () => {
  let project: MigrationProject;
  let url: string;
  let client: pg.Client;
  const name = () => new URL(url).pathname.slice(1);

  const admin = async (sql: string) => {
    const one = new pg.Client({ connectionString: `${process.env['TEST_POSTGRES_URL']}/postgres` });
    await one.connect();
    await one.query(sql);
    await one.end();
  };

  beforeEach(async () => {
    project = migrationProject();
    project.schema(CREW_MODEL);
    project.migration('1_crews', CREWS);
    url = `${process.env['TEST_POSTGRES_URL']}/m_${randomUUID().replaceAll('-', '')}`;
    await admin(`create database ${name()}`);
    client = new pg.Client({ connectionString: url });
    await client.connect();
  });

  afterEach(async () => {
    await client.end();
    await admin(`drop database ${name()} with (force)`);
    project.remove();
  });

  const tables = async () =>
    (await client.query(`select tablename from pg_tables where schemaname = 'public' order by 1`)).rows.map(
      (row: { tablename: string }) => row.tablename,
    );

  it('are applied once, in the table that the ordinary tool keeps', async () => {
    expect(await project.run('apply', url)).toMatchObject({ code: 0, output: 'Applied 1_crews.\n' });
    expect(await project.run('apply', url)).toMatchObject({
      code: 0,
      output: 'The database is up to date.\n',
    });
    expect(await tables()).toEqual(['Crew', '_prisma_migrations']);
    const { rows } = await client.query(
      'select migration_name, finished_at is not null as done from _prisma_migrations',
    );
    expect(rows).toEqual([{ migration_name: '1_crews', done: true }]);
  });

  it('are applied once when two start at the same moment', async () => {
    const ends = await Promise.all([
      project.run('apply', url),
      project.run('apply', url),
      project.run('apply', url),
    ]);
    expect(ends.map(({ code }) => code)).toEqual([0, 0, 0]);
    expect(ends.filter(({ output }) => output.includes('Applied 1_crews'))).toHaveLength(1);
  });

  it('run a script with a function body, checks and exclusions, which the schema need not know', async () => {
    project.migration('2_rules', TRIGGER);
    expect((await project.run('apply', url)).output).toContain('Applied 2_rules');
    await client.query('insert into "Crew" values (1)');
    await expect(client.query('update "Crew" set id = 2')).rejects.toThrow(/does not become/);
    await expect(client.query('insert into "Crew" values (-1)')).rejects.toThrow(/Crew_positive/);
    expect(await project.run('check')).toMatchObject({ code: 0 });
  });

  it('are whole or not at all, and may be tried again once they are right', async () => {
    project.migration('2_broken', 'create table "Half" (id integer); create table "Half" (id integer);');
    const failed = await project.run('apply', url);
    expect(failed.code).toBe(1);
    expect(failed.output).toMatch(
      /The migration 2_broken failed and was undone: relation "Half" already exists/,
    );
    expect(await tables()).toEqual(['Crew', '_prisma_migrations']);
    project.migration('2_broken', 'create table "Half" (id integer);');
    expect(await project.run('apply', url)).toMatchObject({ code: 0, output: 'Applied 2_broken.\n' });
  });

  it('are refused when one was edited after it was applied', async () => {
    await project.run('apply', url);
    project.migration('1_crews', `${CREWS}\n-- a remark`);
    const end = await project.run('apply', url);
    expect(end).toMatchObject({ code: 1 });
    expect(end.output).toMatch(/1_crews was edited after it was applied\. Restore its script/);
  });

  it('are refused when the database has had one that is not known', async () => {
    project.migration('2_newer', 'select 1;');
    await project.run('apply', url);
    const older = migrationProject();
    older.schema(CREW_MODEL);
    older.migration('1_crews', CREWS);
    const end = await older.run('apply', url);
    older.remove();
    expect(end.code).toBe(1);
    expect(end.output).toContain('2_newer, which this version does not know');
  });

  it('are found wanting when the schema says more, and the missing one can be written', async () => {
    project.schema('model Crew {\n  id Int @id\n  name String @default("")\n}\n');
    const check = await project.run('check');
    expect(check.code).toBe(1);
    expect(check.output).toContain('ALTER TABLE "Crew" ADD COLUMN     "name" TEXT NOT NULL DEFAULT');
    expect((await project.run('new', 'crew-names')).output).toMatch(/Wrote .*\d{14}_crew-names/);
    expect(await project.run('check')).toMatchObject({ code: 0 });
    expect((await project.run('new', 'again')).output).toMatch(/^Nothing to migrate/);
    expect((await project.run('new', 'Not A Name')).output).toMatch(/no name for a migration/);
  });
});
