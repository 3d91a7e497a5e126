import type { Fact } from '../notices/notices.face.js';
import type { JobFacts, PhaseFacts } from './facts.js';

/** "job 104, Birch Lane 3". */
export function jobName({ job }: Pick<JobFacts, 'job'>): string {
  return `job ${job.number}, ${job.name}`;
}

/** "mesh" or "mesh (walk)". */
export function phaseName(phase: Pick<PhaseFacts, 'name' | 'area'>): string {
  return phase.area && !phase.name.toLowerCase().includes(phase.area.name.toLowerCase())
    ? `${phase.name} (${phase.area.name})`
    : phase.name;
}

/** What every reminder of a job says first. */
export function placeFacts({ job, site }: Pick<JobFacts, 'job' | 'site'>): Fact[] {
  return [
    { label: 'Job', value: `${job.number}, ${job.name}` },
    { label: 'Address', value: `${site.address}, ${site.town}` },
  ];
}

/** A labelled instant. */
export function when(label: string, at: Date): Fact {
  return { label, value: { at: at.toISOString() } };
}

/** The link to the job. */
export function jobLink({ job }: Pick<JobFacts, 'job'>, words = 'Open the job') {
  return { words, path: `/jobs/${job.number}` };
}

/** The crew that works, or is planned to work, on a phase. */
export function crewOf(phase: PhaseFacts | undefined): string | null {
  return phase?.actualCrewId ?? phase?.planned?.crewId ?? phase?.requiredCrewId ?? null;
}
