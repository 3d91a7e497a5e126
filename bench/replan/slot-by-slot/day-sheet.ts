import type { Interval, Phase, PlanInput } from '../../../shared/schedule/model.js';

/** One more entry than there are slots: the first stands for the slot before the horizon, where things of no length may end. */
const BEFORE = 1;

/** Open and lost time written out slot by slot. Times are slots of the planning axis. */
export class DaySheet {
  private readonly open = new Map<string, Uint8Array>();
  private readonly lost = new Map<string, Uint8Array>();

  constructor(private readonly input: PlanInput) {
    for (const { id, open } of input.calendars) this.open.set(id, this.written(open));
    for (const { id, holds } of input.weather) {
      this.lost.set(id, this.written(holds.filter(({ cause }) => cause.kind !== 'unknown')));
    }
  }

  /** Whether a slot is open by a calendar; without one every slot up to the horizon is. */
  openBy(calendarId: string | undefined): (t: number) => boolean {
    const { horizon } = this.input;
    if (calendarId === undefined) return (t) => t < horizon;
    const sheet = this.open.get(calendarId)!;
    return (t) => sheet[t + BEFORE] === 1;
  }

  /** Whether no weather hold closes a slot for a phase. */
  fairFor({ weatherIds = [] }: Phase): (t: number) => boolean {
    const sheets = weatherIds.map((id) => this.lost.get(id)!);
    return (t) => {
      for (const sheet of sheets) if (sheet[t + BEFORE] === 1) return false;
      return true;
    };
  }

  /** Open slots of the whole horizon. */
  openSlots(calendarId: string | undefined): number {
    let sum = 0;
    const isOpen = this.openBy(calendarId);
    for (let t = 0; t < this.input.horizon; t++) if (isOpen(t)) sum++;
    return sum;
  }

  private written(stretches: readonly Interval[]): Uint8Array {
    const sheet = new Uint8Array(this.input.horizon + BEFORE);
    for (const { from, to } of stretches) {
      for (let t = Math.max(from, -BEFORE); t < Math.min(to, this.input.horizon); t++) sheet[t + BEFORE] = 1;
    }
    return sheet;
  }
}
