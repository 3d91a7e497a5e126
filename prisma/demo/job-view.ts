import type { ApiClient } from './api-client.js';

/** An item of a hold point, as the API shows it. */
export interface ItemView {
  readonly id: string;
  readonly label: string;
  readonly unit: string | null;
  readonly many: boolean;
  readonly limitText: string;
  readonly required: boolean;
}

export interface HoldPointView {
  readonly id: string;
  readonly key: string;
  readonly kind: 'check' | 'inspection' | 'clearance' | 'cure' | 'reading';
  readonly gate: 'start' | 'finish';
  readonly state: 'open' | 'released' | 'refused' | 'waived';
  readonly title: string;
  readonly readingStage: string | null;
  readonly heatingSet: { readonly id: string } | null;
  readonly items: readonly ItemView[];
}

export interface PhaseView {
  readonly id: string;
  readonly key: string;
  readonly kind: string;
  readonly name: string;
  readonly trade: string | null;
  readonly state: 'waiting' | 'started' | 'done' | 'dropped';
  readonly durationKind: 'work' | 'elapsed';
  readonly actualStart: string | null;
  readonly actualFinish: string | null;
  readonly area: { readonly id: string; readonly key: string } | null;
  readonly planned: {
    readonly startAt: string;
    readonly finishAt: string;
    readonly crew: { readonly id: string } | null;
  } | null;
  readonly holdPoints: readonly HoldPointView[];
}

export interface ClearanceView {
  readonly id: string;
  readonly key: string;
  readonly title: string;
  readonly state: 'needed' | 'requested' | 'cleared';
  readonly expectedAt: string | null;
}

export interface InspectionView {
  readonly id: string;
  readonly key: string;
  readonly title: string;
  readonly state: 'needed' | 'requested' | 'booked' | 'passed' | 'failed';
  readonly attempt: number;
  readonly visitFrom: string | null;
  readonly visitTo: string | null;
  readonly plannedVisit: {
    readonly startAt: string;
    readonly finishAt: string;
    readonly requestBy: string;
  } | null;
}

export interface SetView {
  readonly id: string;
  readonly key: string;
  readonly watts: number;
  readonly volts: number;
  readonly ohms: number;
  readonly heatedFeet: number;
  readonly coldLeadFeet: number;
  readonly receivedAt: string | null;
  readonly areas: readonly { readonly id: string; readonly key: string }[];
  readonly readings: readonly {
    readonly stage: string;
    readonly accepted: boolean;
    readonly area: { readonly id: string } | null;
  }[];
}

export interface HookupView {
  readonly id: string;
  readonly state: 'waiting' | 'ready' | 'booked' | 'done';
  readonly needs: readonly { readonly id: string; readonly met: boolean; readonly text: string }[];
  readonly energisingNeeds: readonly { readonly id: string; readonly met: boolean; readonly text: string }[];
  readonly energiseAllowedAt: string | null;
  readonly energisedAt: string | null;
  readonly heatingSet: { readonly id: string };
  readonly phase: { readonly id: string };
}

export interface PlacementView {
  readonly id: string;
  readonly placedAt: string;
  readonly predictedReleaseAt: string | null;
  readonly phase: {
    readonly id: string;
    readonly kind: string;
    readonly area: { readonly id: string } | null;
  };
  readonly readings: readonly { readonly at: string; readonly concreteF: number }[];
  readonly strength: { readonly psi: number; readonly requiredPsi: number; readonly basis: string } | null;
}

/** One job as its people see it. */
export interface JobView {
  readonly id: string;
  readonly number: number;
  readonly name: string;
  readonly state: string;
  readonly site: { readonly id: string; readonly frostDepthInches: number };
  readonly phases: readonly PhaseView[];
  readonly clearances: readonly ClearanceView[];
  readonly inspections: readonly InspectionView[];
  readonly heatingSets: readonly SetView[];
  readonly hookups: readonly HookupView[];
  readonly placements: readonly PlacementView[];
}

const JOB = `query($id: ID!) { job(id: $id) {
  id number name state site { id frostDepthInches }
  phases { id key kind name trade state durationKind actualStart actualFinish area { id key }
    planned { startAt finishAt crew { id } }
    holdPoints { id key kind gate state title readingStage heatingSet { id } items { id label unit many limitText required } } }
  clearances { id key title state expectedAt }
  inspections { id key title state attempt visitFrom visitTo plannedVisit { startAt finishAt requestBy } }
  heatingSets { id key watts volts ohms heatedFeet coldLeadFeet receivedAt areas { id key } readings { stage accepted area { id } } }
  hookups { id state needs { id met text } energisingNeeds { id met text } energiseAllowedAt energisedAt heatingSet { id } phase { id } }
  placements { id placedAt predictedReleaseAt phase { id kind area { id } } readings { at concreteF } strength { psi requiredPsi basis } }
} }`;

/** Reads a job whole. @throws Error when there is none of that id. */
export async function viewJob(client: ApiClient, id: string): Promise<JobView> {
  const { job } = await client.data<{ job: JobView | null }>(JOB, { id });
  if (!job) throw new Error(`There is no job ${id}`);
  return job;
}
