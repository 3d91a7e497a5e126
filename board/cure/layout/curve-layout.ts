/** A point of a course as the drawing needs it. */
export interface CoursePoint {
  readonly at: number;
  readonly basis: 'measured' | 'predicted';
  readonly temperatureF: number;
  readonly psi: number;
}

/** Size of the drawing and of its two fields, in user units. */
export const FIELD = { width: 640, height: 120, gap: 34, left: 72, right: 12, top: 10 } as const;

/** A value with its place on an axis. */
export interface Tick {
  readonly value: number;
  readonly place: number;
}

/** A field of the drawing: its lines, its scale, and a level drawn across it. */
export interface Field {
  readonly top: number;
  readonly measured: string;
  readonly predicted: string;
  readonly marks: readonly { readonly x: number; readonly y: number }[];
  readonly ticks: readonly Tick[];
  readonly levels: readonly Tick[];
}

/** Both fields over one axis of time. */
export interface CurveLayout {
  readonly width: number;
  readonly height: number;
  readonly temperature: Field;
  readonly strength: Field;
  readonly hours: readonly Tick[];
  /** Where the present stands; null when it lies outside. */
  readonly nowX: number | null;
}

/** At most so many readings get a mark of their own; a logger's are a line. */
const MOST_MARKS = 40;

const FREEZING = 32;
const FIRST_FREEZE = 500;

/** Lays a course out: temperature above, strength below, hours from placing across. Pure. */
export function layOutCurve(points: readonly CoursePoint[], requiredPsi: number, now: number): CurveLayout {
  const start = points[0]?.at ?? 0;
  const end = Math.max(points.at(-1)?.at ?? start, start + 3_600_000);
  const inner = FIELD.width - FIELD.left - FIELD.right;
  const x = (at: number) => round(FIELD.left + ((at - start) / (end - start)) * inner);
  const measured = points.filter(({ basis }) => basis === 'measured');
  const last = measured.at(-1);
  const predicted = [...(last ? [last] : []), ...points.filter(({ basis }) => basis === 'predicted')];
  const field = (top: number, levels: readonly number[], of: (point: CoursePoint) => number): Field => {
    const values = [...points.map(of), ...levels];
    const [low, high, step] = scale(Math.min(...values), Math.max(...values));
    const y = (value: number) => round(top + FIELD.height - ((value - low) / (high - low)) * FIELD.height);
    const path = (list: readonly CoursePoint[]) =>
      list.length < 2 ? '' : `M${list.map((point) => `${x(point.at)} ${y(of(point))}`).join('L')}`;
    const ticks: Tick[] = [];
    for (let value = low; value <= high + step / 2; value += step) ticks.push({ value, place: y(value) });
    return {
      top,
      measured: path(measured),
      predicted: path(predicted),
      marks:
        measured.length > MOST_MARKS ? [] : measured.map((point) => ({ x: x(point.at), y: y(of(point)) })),
      ticks,
      levels: levels.map((value) => ({ value, place: y(value) })),
    };
  };
  const below = FIELD.top + FIELD.height + FIELD.gap;
  const hours = (end - start) / 3_600_000;
  const every = [1, 2, 3, 6, 12, 24, 48, 72, 168].find((step) => hours / step <= 9) ?? 336;
  return {
    width: FIELD.width,
    height: below + FIELD.height + 24,
    temperature: field(FIELD.top, [FREEZING], ({ temperatureF }) => temperatureF),
    strength: field(below, [...new Set([FIRST_FREEZE, requiredPsi])], ({ psi }) => psi),
    hours: Array.from({ length: Math.floor(hours / every) + 1 }, (_, i) => ({
      value: i * every,
      place: x(start + i * every * 3_600_000),
    })),
    nowX: now > start && now < end ? x(now) : null,
  };
}

const round = (value: number): number => Math.round(value * 10) / 10;

/** A scale with round steps that holds both ends: low, high, step. */
function scale(low: number, high: number): readonly [number, number, number] {
  const span = Math.max(1, high - low);
  const step = [5, 10, 20, 50, 100, 200, 500, 1000, 2000].find((one) => span / one <= 5) ?? 5000;
  return [Math.floor(low / step) * step, Math.ceil(high / step) * step, step];
}
