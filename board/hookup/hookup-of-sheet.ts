import type { HookupSheetQuery } from '../api/documents.js';

/** A hookup as both pages show it, the one for whoever is signed in and the one that a link opens. */
export type HookupOfSheet = HookupSheetQuery['hookupSheet']['hookups'][number];
