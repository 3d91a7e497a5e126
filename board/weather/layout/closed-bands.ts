import type { Axis } from '../../board/layout/axis.js';
import type { Windows } from '../site-weather.js';

/** A stretch of a band, in pixels. */
export interface BandStretch {
  readonly left: number;
  readonly width: number;
  /** Names of the kinds of work that are closed in it. */
  readonly kinds: readonly string[];
  /** Whether all kinds of work of the row are closed in it. */
  readonly all: boolean;
}

/** The band of one kind of work: closed, asked for something, unknown before the forecast ends. */
export interface KindBand {
  readonly key: string;
  readonly name: string;
  readonly closed: readonly BandStretch[];
  readonly required: readonly { readonly left: number; readonly width: number }[];
  readonly unknown: readonly { readonly left: number; readonly width: number }[];
}

/** One band for all kinds of work: cut wherever a kind closes or opens. */
export function commonBand(windows: readonly Windows[], axis: Axis): BandStretch[] {
  const closed = windows.flatMap(({ name, closed: stretches }) =>
    stretches.map(({ from, to }) => ({ name, from: Date.parse(from), to: Date.parse(to) })),
  );
  const cuts = [...new Set(closed.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  return cuts.flatMap((from, i) => {
    const to = cuts[i + 1];
    if (to === undefined) return [];
    const standing = closed.filter((one) => one.from <= from && one.to >= to);
    const kinds = [...new Set(standing.map(({ name }) => name))];
    const place = across(from, to, axis);
    return kinds.length > 0 && place ? [{ ...place, kinds, all: kinds.length === windows.length }] : [];
  });
}

/** A band for each kind of work. */
export function kindBands(windows: readonly Windows[], axis: Axis): KindBand[] {
  return windows.map(({ limitKey, name, closed, requirements, unknown }) => ({
    key: limitKey,
    name,
    closed: closed.flatMap(({ from, to }) => {
      const place = across(Date.parse(from), Date.parse(to), axis);
      return place ? [{ ...place, kinds: [name], all: true }] : [];
    }),
    required: requirements
      .filter(({ known }) => known)
      .flatMap(({ from, to }) => across(Date.parse(from), Date.parse(to), axis) ?? []),
    unknown: unknown.flatMap(({ from, to }) => across(Date.parse(from), Date.parse(to), axis) ?? []),
  }));
}

function across(from: number, to: number, axis: Axis): { left: number; width: number } | null {
  if (to <= axis.start || from >= axis.end) return null;
  const left = axis.x(from);
  return { left, width: Math.max(1.5, axis.x(to) - left) };
}
