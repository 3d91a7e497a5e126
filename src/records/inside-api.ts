import { Injectable } from '@nestjs/common';
import { ModuleRef } from '@nestjs/core';
import { GraphQLSchemaHost } from '@nestjs/graphql';
import { graphql } from 'graphql';
import type { Context } from '../platform/context.js';
import type { RequestContext } from '../platform/graphql/request-context.js';
import type { TypedDocumentString } from './api/documents.js';

/** Asks the service's own API as a person of the company would, so that paper and pages say the same. */
@Injectable()
export class InsideApi {
  constructor(private readonly modules: ModuleRef) {}

  /** @throws Error when the API answers with one. */
  async ask<R, V extends Record<string, unknown>>(
    ctx: Context,
    document: TypedDocumentString<R, V>,
    variableValues: V,
  ): Promise<R> {
    const { schema } = this.modules.get(GraphQLSchemaHost, { strict: false });
    const contextValue: RequestContext = { request: null, reply: null, ctx };
    const source = document.toString();
    const { data, errors } = await graphql({ schema, source, variableValues, contextValue });
    if (errors?.[0]) throw errors[0];
    // Moments are text in the answer as a client gets it; inside they are still Dates.
    return JSON.parse(JSON.stringify(data)) as R;
  }
}
