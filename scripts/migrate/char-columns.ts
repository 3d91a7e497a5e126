import {
  ColumnTypeEnum,
  type SqlDriverAdapter,
  type SqlQuery,
  type SqlResultSet,
} from '@prisma/driver-adapter-utils';

/** PostgreSQL's internal one-byte type `"char"`, of which the system catalogue is full. */
const CHAR = 18;
const TEXT = 25;

/** The part of the adapter where the driver's raw answer can still be seen. */
interface RawAnswers {
  performIO(query: SqlQuery): Promise<{ fields: { dataTypeID: number }[] }>;
}

/**
 * Teaches the adapter the internal type `"char"`, which it refuses; the schema engine needs it, as a character, to read
 * a live database.
 */
export function readCharColumns(adapter: SqlDriverAdapter): void {
  const raw = adapter as SqlDriverAdapter & RawAnswers;
  // Taken out of its object on purpose: it is called on a stand-in below.
  const read: (query: SqlQuery) => Promise<SqlResultSet> = Reflect.get(adapter, 'queryRaw');
  adapter.queryRaw = async (query) => {
    const characters: number[] = [];
    const watched: unknown = Object.create(raw, {
      performIO: {
        value: async (asked: SqlQuery) => {
          const answer = await raw.performIO(asked);
          answer.fields.forEach((field, column) => {
            if (field.dataTypeID !== CHAR) return;
            field.dataTypeID = TEXT;
            characters.push(column);
          });
          return answer;
        },
      },
    });
    const set = await read.call(watched, query);
    for (const column of characters) set.columnTypes[column] = ColumnTypeEnum.Character;
    return set;
  };
}
