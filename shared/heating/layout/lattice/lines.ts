/** Lines across a field in one direction, each said by a number that grows from one side of the field to the other. */
export interface LineFamily {
  /** Numbers of the lines that must be there: along setbacks, and where the cable comes in or leaves. */
  readonly cuts: readonly number[];
  /** Least distance between two lines, in. */
  readonly apart: (one: number, other: number) => number;
}

/** What was asked of the lines: no closer than `pitch`, in, and in every stretch between two cuts whose bit is set one fewer. */
export interface Division {
  readonly pitch: number;
  readonly fewer: number;
}

const HAIR = 1e-6;

/** As many even lines in every stretch between two cuts as lie no closer than the pitch; at least its two ends. */
export function divide({ cuts, apart }: LineFamily, { pitch, fewer }: Division): number[] {
  const at = [cuts[0]!];
  cuts.slice(1).forEach((to, i) => {
    const from = cuts[i]!;
    const line = (k: number, n: number) => from + ((to - from) * k) / n;
    const closest = (n: number) => Math.min(apart(from, line(1, n)), apart(line(n - 1, n), to));
    let n = Math.max(1, Math.floor(apart(from, to) / pitch + HAIR));
    while (n > 1 && closest(n) < pitch - HAIR) n--;
    if (n > 1 && (fewer >> i) & 1) n--;
    for (let k = 1; k <= n; k++) at.push(k === n ? to : line(k, n));
  });
  return at;
}

/**
 * Cuts in order, without those that lie closer to another one than `least`; of two such the one named first stays.
 */
export function cutsOf(wanted: readonly number[], apart: LineFamily['apart'], least: number): number[] {
  const kept: number[] = [];
  for (const cut of wanted) {
    if (kept.every((other) => apart(cut, other) >= least - HAIR)) kept.push(cut);
  }
  return kept.sort((a, b) => a - b);
}
