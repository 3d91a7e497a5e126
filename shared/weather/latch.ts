import type { Answer } from './answer.js';

/**
 * Whether each hour is closed by a limit that stays closed until an hour reopens it. It begins open; after hours nobody
 * knows it stays unknown until a broken hour closes it or a fair one would open it in any case.
 */
export function latch(broken: readonly Answer[], reopens: readonly Answer[] | null): readonly Answer[] {
  if (!reopens) return broken;
  let before: Answer = false;
  return broken.map((now, i) => {
    before = next(before, now, reopens[i]!);
    return before;
  });
}

function next(before: Answer, broken: Answer, reopens: Answer): Answer {
  if (broken === true) return true;
  if (before === false) return broken;
  const closed = stillClosed(broken, reopens);
  if (before === true) return closed;
  return closed === broken ? closed : 'unknown';
}

/** One that was closed and is not surely broken now. */
function stillClosed(broken: false | 'unknown', reopens: Answer): Answer {
  if (reopens === false) return true;
  return reopens === true && broken === false ? false : 'unknown';
}
