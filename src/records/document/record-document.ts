import type { RecordFacts } from '../record-facts.js';
import type { RecordDocument } from './block.js';
import { cures } from './sections/cures.js';
import { design } from './sections/design.js';
import { drawings } from './sections/drawings.js';
import { electrical } from './sections/electrical.js';
import { front } from './sections/front.js';
import { holdPoints, inspections } from './sections/gates.js';
import { heating } from './sections/heating.js';
import { journal } from './sections/journal.js';
import { photos } from './sections/photos.js';
import { work } from './sections/work.js';

/** The sections of a closing record in their order. */
const SECTIONS = [
  front,
  drawings,
  heating,
  electrical,
  cures,
  inspections,
  holdPoints,
  design,
  work,
  photos,
  journal,
];

/** The closing record of a job as it is read. Pure: equal facts give an equal document. */
export function recordDocument(facts: RecordFacts): RecordDocument {
  const { job, company } = facts;
  return {
    title: `Closing record of job ${job.number} ${job.name}`,
    head: `${job.number} ${job.name}, ${job.site.address}`,
    subject: company.name,
    blocks: SECTIONS.flatMap((section) => section(facts)),
  };
}
