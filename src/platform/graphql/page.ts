import type { Type } from '@nestjs/common';
import { ArgsType, Field, Int, ObjectType } from '@nestjs/graphql';
import { CodedError } from './coded-error.js';

/** The place of a page in its list. */
@ObjectType({ description: 'The place of a page in its list.' })
export class PageInfo {
  @Field(() => Boolean, { description: 'Whether there are rows after this page.' })
  readonly hasNextPage!: boolean;

  @Field(() => Boolean, { description: 'Whether there are rows before this page.' })
  readonly hasPreviousPage!: boolean;

  @Field(() => String, { nullable: true, description: 'Cursor of the first row.' })
  readonly startCursor!: string | null;

  @Field(() => String, { nullable: true, description: 'Cursor of the last row.' })
  readonly endCursor!: string | null;
}

/** Forward paging of a list. */
@ArgsType()
export class PageArgs {
  @Field(() => Int, { defaultValue: 50, description: 'How many rows, 1 to 200.' })
  readonly first!: number;

  @Field(() => String, {
    nullable: true,
    description: 'Cursor after which to go on; none starts at the front.',
  })
  readonly after?: string | null;
}

export interface Edge<T> {
  readonly cursor: string;
  readonly node: T;
}

export interface Connection<T> {
  readonly edges: readonly Edge<T>[];
  readonly pageInfo: PageInfo;
}

/** GraphQL types of a Relay connection over a node type. */
export function connectionType<T extends object>(name: string, node: Type<T>): Type<Connection<T>> {
  @ObjectType(`${name}Edge`, { description: `A row of ${name}Connection with its cursor.` })
  class NodeEdge {
    @Field(() => String, { description: 'Cursor of this row.' })
    readonly cursor!: string;

    @Field(() => node, { description: 'The row.' })
    readonly node!: T;
  }

  @ObjectType(`${name}Connection`, { description: `A page of a list (Relay connection).` })
  class NodeConnection {
    @Field(() => [NodeEdge], { description: 'The rows of this page.' })
    readonly edges!: NodeEdge[];

    @Field(() => PageInfo, { description: 'Where the page stands.' })
    readonly pageInfo!: PageInfo;
  }
  return NodeConnection;
}

/**
 * Reads one page of rows ordered by id.
 *
 * @param read gets Prisma's `take`, `cursor` and `skip` and must order by `id` ascending within the company.
 * @throws CodedError when `first` is out of range.
 */
export async function pageOf<T extends { id: string | bigint }>(
  args: PageArgs,
  read: (window: { take: number; after: string | null }) => Promise<T[]>,
): Promise<Connection<T>> {
  if (args.first < 1 || args.first > 200)
    throw new CodedError('bad-request', 'first must be 1 to 200; ask for further pages with after.');
  const after = args.after ? decode(args.after) : null;
  const rows = await read({ take: args.first + 1, after });
  const edges = rows.slice(0, args.first).map((node) => ({ cursor: encode(String(node.id)), node }));
  return {
    edges,
    pageInfo: {
      hasNextPage: rows.length > args.first,
      hasPreviousPage: after !== null,
      startCursor: edges[0]?.cursor ?? null,
      endCursor: edges.at(-1)?.cursor ?? null,
    },
  };
}

const encode = (id: string): string => Buffer.from(`row:${id}`).toString('base64url');

function decode(cursor: string): string {
  const text = Buffer.from(cursor, 'base64url').toString();
  if (!/^row:[0-9a-f-]+$/.test(text))
    throw new CodedError(
      'bad-request',
      'after is not a cursor of this list; use endCursor of the page before.',
    );
  return text.slice('row:'.length);
}
