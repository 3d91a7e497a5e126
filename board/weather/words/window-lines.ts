import { momentWords, stretchWords, timeWords } from '../../time/moment-words.js';
import { sourceWords } from '../../words/source-words.js';
import type { Windows } from '../site-weather.js';

/** One thing to say about the weather for a kind of work. */
export interface WindowLine {
  readonly kind: 'closed' | 'required' | 'unknown';
  readonly key: string;
  readonly head: string;
  readonly text: string;
}

type Asked = readonly [from: number, to: number];

/** The longest day has 25 hours. */
const DAY_MS = 25 * 3_600_000;

type Cause = Windows['closed'][number]['causes'][number];

/**
 * What closes a kind of work between two moments, what the weather asks for, and what is unknown. Each limit is told
 * with its value, its hour, its source and how far that can be trusted.
 */
export function windowLines(windows: Windows, from: number, to: number, zone: string): WindowLine[] {
  const { name, limitKey } = windows;
  const within = <T extends { readonly from: string; readonly to: string }>(stretches: readonly T[]) =>
    stretches.flatMap((stretch) => {
      const begin = Math.max(from, Date.parse(stretch.from));
      const end = Math.min(to, Date.parse(stretch.to));
      return begin < end ? [{ ...stretch, when: stretchWords(begin, end, zone) }] : [];
    });
  return [
    ...within(windows.closed).map(({ causes, when, ...stretch }): WindowLine => ({
      kind: 'closed',
      key: `${limitKey} closed ${stretch.from}`,
      head: `Closed for ${name}, ${when}`,
      text: causes.map((cause) => causeWords(cause, [from, to], zone)).join('; '),
    })),
    ...within(windows.requirements)
      .filter(({ known }) => known)
      .map(({ requirementId, text, cause, when, mark, source, ...stretch }): WindowLine => ({
        kind: 'required',
        key: `${limitKey} ${requirementId} ${stretch.from}`,
        head: `${name} asks, ${when}`,
        text: `${text} (${[
          ...(cause ? [`${cause.text}, at worst ${hourWords(cause.hour, [from, to], zone)}`] : []),
          sourceWords({ mark, source }),
        ].join('; ')})`,
      })),
    ...within(windows.unknown).map(({ when, ...stretch }): WindowLine => ({
      kind: 'unknown',
      key: `${limitKey} unknown ${stretch.from}`,
      head: `Unknown for ${name}, ${when}`,
      text: 'the forecast says too little to call it open',
    })),
  ];
}

/** "Too cold to place without protection: 26 °F, under 40 °F, at worst 05:00 (ACI 306.1-90; published)". */
function causeWords({ text, hour, mark, source }: Cause, asked: Asked, zone: string): string {
  return `${text}, at worst ${hourWords(hour, asked, zone)} (${sourceWords({ mark, source })})`;
}

/** The hour of a value; with its day where a stretch goes on beyond what was asked about, and its worst lies there. */
function hourWords(hour: string, [from, to]: Asked, zone: string): string {
  const at = Date.parse(hour);
  return at >= from && at < to && to - from <= DAY_MS ? timeWords(at, zone) : momentWords(at, zone);
}
