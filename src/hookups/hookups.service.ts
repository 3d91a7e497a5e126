import { Injectable } from '@nestjs/common';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import type { Refusal } from '../platform/outcomes/refusal.js';
import {
  type BookHookupInput,
  bookSchema,
  energisedSchema,
  hookupSchema,
  leadsSchema,
  type RecordEnergisedInput,
  type RecordHookupInput,
  type RecordLeadsInput,
} from './hookup.inputs.js';
import type { HookupChanged } from './hookup.outcomes.js';
import { bookHookup } from './steps/book-hookup.js';
import { recordEnergised } from './steps/record-energised.js';
import { recordHookup } from './steps/record-hookup.js';
import { recordLeads } from './steps/record-leads.js';

type Answer = Promise<HookupChanged | Refusal>;

/** Hookups from the leads to the energised set. Each step is a change of its own. */
@Injectable()
export class HookupsService {
  constructor(private readonly changes: ChangeRunner) {}

  recordLeads(ctx: Context, input: RecordLeadsInput): Answer {
    return this.changes.run(ctx, { operation: 'recordLeads', input }, (change) => {
      parseInput(leadsSchema, input);
      return recordLeads(change, input);
    });
  }

  book(ctx: Context, input: BookHookupInput): Answer {
    return this.changes.run(ctx, { operation: 'bookHookup', input }, (change) => {
      parseInput(bookSchema, input);
      return bookHookup(change, input);
    });
  }

  recordHookup(ctx: Context, input: RecordHookupInput): Answer {
    return this.changes.run(ctx, { operation: 'recordHookup', input }, (change) => {
      parseInput(hookupSchema, input);
      return recordHookup(change, input);
    });
  }

  recordEnergised(ctx: Context, input: RecordEnergisedInput): Answer {
    return this.changes.run(ctx, { operation: 'recordEnergised', input }, (change) => {
      parseInput(energisedSchema, input);
      return recordEnergised(change, input);
    });
  }
}
