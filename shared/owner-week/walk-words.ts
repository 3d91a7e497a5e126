import type { OwnerPhase } from './owner-facts.js';

/** Kinds of work that end the use of the old way in, and those after which the new one may be walked on. */
const CLOSING: readonly string[] = ['demo', 'dig', 'walk-base', 'block'];
const OPENING: readonly string[] = ['bed-cure', 'stone'];

/** When nobody can walk to the door by this entry, in a sentence; `say` gives a day in words. */
export function walkWords(
  phases: readonly OwnerPhase[],
  now: number,
  say: (moment: number) => string,
): string {
  const closes = Math.min(...momentsOf(phases, CLOSING, 'from'));
  const opens = Math.max(...momentsOf(phases, OPENING, 'until'));
  if (!Number.isFinite(closes) || !Number.isFinite(opens))
    return 'The office will tell you on which days the walk is closed.';
  const last = phases.filter(({ kind }) => OPENING.includes(kind));
  if (last.every(({ state }) => state === 'done') && opens <= now)
    return `The walk and the steps are open again since ${say(opens)}.`;
  const until = `until ${say(opens)}, when the bed under the stone has hardened`;
  return closes <= now
    ? `The walk and the steps are closed ${until}. Use the other door.`
    : `The walk and the steps can be used until they are broken out on ${say(closes)}; from then on they are closed ${until}. Use the other door then.`;
}

const momentsOf = (
  phases: readonly OwnerPhase[],
  kinds: readonly string[],
  end: 'from' | 'until',
): number[] =>
  phases
    .filter(({ kind }) => kinds.includes(kind))
    .flatMap(({ stretches }) => stretches.map((stretch) => stretch[end]));
