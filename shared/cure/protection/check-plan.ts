import type { ProtectionPlan } from './protection-plan.js';

const HOURS_MOST = 24 * 90;

/** What is wrong with a protection plan, a sentence each with what to do; empty when it can be carried out. */
export function protectionFaults({ blankets, heat, offAt }: ProtectionPlan): string[] {
  const stretches = [
    ...blankets.map((stretch) => ({ ...stretch, what: 'Blankets' })),
    ...heat.map((stretch) => ({ ...stretch, what: 'Heat' })),
  ];
  const times = stretches.flatMap(({ from, until, what }) => [
    ...(from >= 0 && from <= HOURS_MOST
      ? []
      : [`${what} from ${from} h: give hours from placing, 0 to 2160`]),
    ...(until === null || until > from ? [] : [`${what} until ${until} h: must end after ${from} h`]),
  ]);
  const layers = blankets.flatMap(({ layers, each }) => [
    ...(Number.isSafeInteger(layers) && layers >= 0 && layers <= 6 ? [] : [`${layers} layers: give 0 to 6`]),
    ...(each > 0 && each <= 30 ? [] : [`R ${each} a layer: give more than 0, up to 30 h·ft²·°F/Btu`]),
  ]);
  const inside = heat.flatMap(({ inside: t }) =>
    t > 32 && t <= 100 ? [] : [`${t} °F in the enclosure: give one over 32, up to 100`],
  );
  const off = offAt === null || offAt >= 0 ? [] : [`Off at ${offAt} h: cannot come off before placing`];
  return [...times, ...layers, ...inside, ...off];
}
