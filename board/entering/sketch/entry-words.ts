import { ticked, type Values } from '../forms/field.js';
import { AREAS, heats } from '../forms/job-fields.js';
import { typedNumber } from '../forms/typed-number.js';

/** The entry as typed, read back in sentences; only what is typed is said. */
export function entryWords(values: Values, frost: number | null): string[] {
  const number = (name: string) => typedNumber(values[name] ?? '');
  const known = (...names: string[]) => names.every((name) => number(name) !== null);
  const said = (name: string) => String(Math.round((number(name) ?? 0) * 100) / 100);
  const words: string[] = [];
  if (ticked(values, 'hasLanding') && known('landingOut', 'landingWide', 'landingHigh'))
    words.push(
      `Landing ${said('landingWide')} in along the wall and ${said('landingOut')} in out from it, ${said('landingHigh')} in above the walk.`,
    );
  if (ticked(values, 'hasSteps') && known('risers', 'riser')) {
    const total = (number('risers') ?? 0) * (number('riser') ?? 0);
    words.push(`${said('risers')} risers of ${said('riser')} in climb ${Math.round(total * 100) / 100} in.`);
  }
  if (ticked(values, 'hasWalk') && known('walkLong', 'walkWide'))
    words.push(`Walk ${said('walkLong')} ft long, ${said('walkWide')} in wide.`);
  if ((ticked(values, 'hasLanding') || ticked(values, 'hasSteps')) && known('footingBottom'))
    words.push(
      `The footing's bottom lies ${said('footingBottom')} in under grade${frost === null ? '' : frostWords(number('footingBottom') ?? 0, frost)}.`,
    );
  const heated = AREAS.filter((area) => ticked(values, area.has) && ticked(values, area.heated));
  words.push(
    heats(values)
      ? `Heated: ${heated.map(({ name }) => name.toLowerCase()).join(', ')}${known('watts', 'heatedLong') && (number('heatedLong') ?? 0) > 0 ? `, by ${said('watts')} W over ${said('heatedLong')} ft: ${perFoot(number('watts') ?? 0, number('heatedLong') ?? 1)} W per foot` : ''}.`
      : 'Nothing is heated.',
  );
  return words;
}

const perFoot = (watts: number, feet: number): string => String(Math.round((watts / feet) * 10) / 10);

function frostWords(bottom: number, frost: number): string {
  const below = Math.round((bottom - frost) * 100) / 100;
  if (below < 0) return `, ${-below} in short of the frost depth of ${frost} in`;
  return below === 0
    ? `, at the frost depth of ${frost} in`
    : `, ${below} in below the frost depth of ${frost} in`;
}
