/* What the walkthrough asks the public API. */

const OUTLOOK = `requiredPsi hoursToFirstFreeze method assumption mark caution
  release { at basis } firstFreeze { at basis } lowest { at basis coldestF } freezes { at basis psi }`;

const BRANCH = `branch placedAt curedAt jobFinish allFinish equipmentDays heatingHours cautions
  protection { text } outlook { ${OUTLOOK} }`;

/** Both ways with a pour. */
export const COMPARISON = `query($input: ProtectOrWaitInput!) { protectOrWait(input: $input) {
  cold coldRule protect { ${BRANCH} } wait { ${BRANCH} } bare { ${OUTLOOK} }
  jobs { waitLaterMinutes job { number name } } } }`;

/** A placement with its course. */
export const PLACEMENT = `query($id: ID!) { placement(id: $id) { id predictedReleaseAt protectionPlan { text }
  outlook { ${OUTLOOK} points { at basis temperatureF coldestF airF psi } }
  strength { psi requiredPsi basis method mark caution releaseAt }
  alarms(standingOnly: false) { kind openedAt clearedAt finding { text measured limit mark source } } } }`;

export interface MomentView {
  readonly at: string;
  readonly basis: 'measured' | 'predicted';
  readonly coldestF: number | null;
  readonly psi: number | null;
}

export interface OutlookView {
  readonly requiredPsi: number;
  readonly hoursToFirstFreeze: number | null;
  readonly method: string;
  readonly assumption: string;
  readonly mark: string;
  readonly caution: string;
  readonly release: MomentView | null;
  readonly firstFreeze: MomentView | null;
  readonly lowest: MomentView;
  readonly freezes: MomentView | null;
}

export interface BranchView {
  readonly branch: 'protect' | 'wait';
  readonly placedAt: string | null;
  readonly curedAt: string | null;
  readonly jobFinish: string | null;
  readonly allFinish: string | null;
  readonly equipmentDays: number;
  readonly heatingHours: number;
  readonly cautions: readonly string[];
  readonly protection: { readonly text: string };
  readonly outlook: OutlookView | null;
}

export interface ComparisonView {
  readonly cold: boolean;
  readonly coldRule: string;
  readonly protect: BranchView;
  readonly wait: BranchView;
  readonly bare: OutlookView | null;
}

export interface PlacementView {
  readonly id: string;
  readonly predictedReleaseAt: string | null;
  readonly outlook: OutlookView & {
    readonly points: readonly {
      readonly at: string;
      readonly basis: 'measured' | 'predicted';
      readonly temperatureF: number;
    }[];
  };
  readonly strength: { readonly psi: number; readonly requiredPsi: number; readonly basis: string };
  readonly alarms: readonly {
    readonly kind: string;
    readonly openedAt: string;
    readonly clearedAt: string | null;
    readonly finding: { readonly text: string; readonly measured: string };
  }[];
}
