import type { ColdStory } from './play-cold.js';
import type { BranchView } from './questions.js';

/** What the cold walkthrough prints at its end. */
export function coldSummary(story: ColdStory, local: (at: Date) => string): string {
  const at = (iso: string | null | undefined) => (iso ? local(new Date(iso)) : 'out of sight');
  const { protect, wait } = story.comparison;
  const row = (label: string, of: (branch: BranchView) => string) =>
    `  ${label.padEnd(34)}${of(protect).padEnd(24)}${of(wait)}`;
  const cautions = [...new Set([...protect.cautions, ...wait.cautions])];
  return [
    '',
    'Protect or wait, carried through the whole plan:',
    `  ${''.padEnd(34)}${'protect'.padEnd(24)}wait`,
    row('placed', (branch) => at(branch.placedAt)),
    row('cure ends by the plan', (branch) => at(branch.curedAt)),
    row('job finished', (branch) => at(branch.jobFinish)),
    row('equipment-days', (branch) => String(branch.equipmentDays)),
    row('hours of heating', (branch) => String(branch.heatingHours)),
    row('lowest in the concrete', (branch) => `${branch.outlook?.lowest.coldestF ?? '–'} °F`),
    row('hours to 500 psi', (branch) => branch.outlook?.hoursToFirstFreeze?.toFixed(1) ?? 'out of sight'),
    row('freezes before 500 psi', (branch) => (branch.outlook?.freezes ? 'yes' : 'no')),
    ...cautions.map((caution) => `  ! ${caution}`),
    '',
    `Without protection: freezes before 500 psi, at ${at(story.bareFreezesAt)} with ${Math.floor(story.bareFreezesPsi)} psi.`,
    `Readings by HTTP: ${story.posts.taken} taken, ${story.posts.known} known from before.`,
    ...story.refusals.map(({ tried, code }) => `Refused: ${tried} (${code}).`),
    `Lowest temperature: ${story.lowestF} °F at ${at(story.lowestAt)}.`,
    `First-freeze strength (500 psi) measured: ${at(story.firstFreezeAt)}, ${story.hoursToFirstFreeze.toFixed(1)} h after placing.`,
    `Released on measurement: ${at(story.releasedAt)} with ${Math.floor(story.releasedPsi)} psi.`,
    `Protection off: ${at(story.protectionOffAt)}.`,
    `Alarms: ${story.alarms.map(({ kind, at: when }) => `${kind} ${at(when)}`).join('; ') || 'none'}.`,
    `Mails about the cure: ${story.mails.filter((subject) => /placement|freezing|Protection|Cure/i.test(subject)).length}.`,
    `Method: ${story.method}`,
    `Caution: ${story.caution}`,
    '',
  ].join('\n');
}
