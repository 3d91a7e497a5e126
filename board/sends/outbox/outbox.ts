import type { Conflict, Send, SendState } from '../send.js';
import type { ChangeName } from '../change-documents.js';
import { type MadeChange, newRecord, type OutboxRecord } from './outbox-record.js';
import type { OutboxStore } from './outbox-store.js';

/** What came of one try. `unreachable` and `signed-out` stop the line; `failed` counts against the record alone. */
export type Delivered =
  | { readonly state: 'done' | 'refused'; readonly message: string; readonly details: readonly string[] }
  | { readonly state: 'conflict'; readonly message: string; readonly conflict: Conflict }
  | { readonly state: 'unreachable' | 'signed-out' | 'failed'; readonly message: string };

/** What an outbox needs of its surroundings. */
export interface OutboxWorld {
  readonly store: OutboxStore;
  /** One try; never throws, because whatever happened belongs on the page. */
  readonly deliver: (record: OutboxRecord, bytes: ArrayBuffer | null) => Promise<Delivered>;
  /** Runs work while no other page of the device runs such work. */
  readonly alone: (work: () => Promise<void>) => Promise<void>;
  /** Tells the other pages of the device that the store has changed. */
  readonly announce: () => void;
  readonly newKey: () => string;
  /** Whether a change is work on site, which is sent by itself however old it is. */
  readonly ofTheSite: (change: string) => boolean;
}

/** What a page shows of an outbox. */
export interface OutboxView {
  readonly sends: readonly Send[];
  /** How many changes have no answer yet. */
  readonly unsent: number;
  /** How many of them only a later version of the client can read. */
  readonly unreadable: number;
}

/** After as many failures of the service a record steps out of the line, so that the others get through. */
const MOST_FAILURES = 5;

/**
 * The changes of one person on one device: kept first, then sent in the order they were made by one page at a time.
 * Nothing leaves it without an answer or the person's word.
 */
export class Outbox {
  private view: OutboxView = { sends: [], unsent: 0, unreadable: 0 };
  private readonly listeners = new Set<() => void>();
  private readonly waiting = new Map<string, (state: SendState) => void>();
  /** Outcomes that were good need no place on the disk. */
  private done: readonly Send[] = [];
  private sending: string | null = null;
  private held = new Set<string>();
  private readings = 0;

  constructor(private readonly world: OutboxWorld) {}

  /** Reads what an earlier page has left; what is not work on site then waits for the person. */
  async open(): Promise<void> {
    const { records } = await this.world.store.all();
    const left = records.filter(({ state, change }) => state === 'unsent' && !this.world.ofTheSite(change));
    this.held = new Set(left.map(({ key }) => key));
    await this.refresh();
  }

  /** Keeps a change, and only then sends it. Resolves when it has an answer, or when no answer can be had now. */
  async send(made: MadeChange): Promise<SendState> {
    const record = newRecord({ ...made, key: this.world.newKey() });
    await this.world.store.add(record, made.file?.bytes ?? null);
    await this.changed();
    return new Promise((resolve) => {
      this.waiting.set(record.key, resolve);
      void this.drain();
    });
  }

  /**
   * Sends what is unsent, oldest first, until all is answered or the service is out of reach. Pictures come last: they are
   * large, nothing rests on them, and a start or a reading must not wait for them on a weak signal.
   */
  async drain(): Promise<void> {
    await this.world.alone(async () => {
      const passed = new Set<string>();
      for (let next = await this.next(passed); next; next = await this.next(passed)) {
        if (!(await this.deliver(next))) break;
        passed.add(next.key);
      }
    });
    for (const { key, state } of this.view.sends) if (state !== 'sending') this.settle(key, state);
  }

  /** Sends a change that waits for the person's word. */
  async tryAgain(key: string): Promise<void> {
    this.held.delete(key);
    const { records } = await this.world.store.all();
    const record = records.find((one) => one.key === key);
    if (record?.failures) await this.world.store.update({ ...record, failures: 0 });
    await this.changed();
    await this.drain();
  }

  /** Puts an answer away, or gives a change up. */
  async dismiss(key: string): Promise<void> {
    this.done = this.done.filter((send) => send.key !== key);
    await this.world.store.remove(key);
    await this.changed();
  }

  /** Puts the person's own value over the other one: a new change, made in full sight of both. */
  async replace(key: string, input: Readonly<Record<string, unknown>>): Promise<SendState> {
    const { records } = await this.world.store.all();
    const record = records.find((one) => one.key === key);
    if (!record) return 'done';
    const { personId, change, title, file } = record;
    const bytes = file ? await this.world.store.bytesOf(key) : null;
    const sent = this.send({
      personId,
      change,
      title,
      input,
      file: file && bytes ? { ...file, bytes } : null,
    });
    await this.dismiss(key);
    return sent;
  }

  /** Reads the store anew, as after a word from another page. */
  async refresh(): Promise<void> {
    const reading = ++this.readings;
    const { records, unreadable } = await this.world.store.all();
    if (reading !== this.readings) return;
    const kept = records.map((record) => this.shown(record)).toReversed();
    this.view = {
      sends: [...kept, ...this.done],
      unsent: records.filter(({ state }) => state === 'unsent').length + unreadable,
      unreadable,
    };
    for (const listener of this.listeners) listener();
  }

  readonly snapshot = (): OutboxView => this.view;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  private async next(passed: ReadonlySet<string>): Promise<OutboxRecord | undefined> {
    const { records } = await this.world.store.all();
    const ready = records.filter(
      ({ key, state, failures }) =>
        state === 'unsent' && failures < MOST_FAILURES && !this.held.has(key) && !passed.has(key),
    );
    return ready.find(({ file }) => !file) ?? ready[0];
  }

  /** @returns whether the line may go on. */
  private async deliver(record: OutboxRecord): Promise<boolean> {
    this.sending = record.key;
    await this.refresh();
    const bytes = record.file ? await this.world.store.bytesOf(record.key) : null;
    const answer = await this.world.deliver(record, bytes);
    this.sending = null;
    await this.write(record, answer);
    await this.changed();
    const state = answer.state;
    if (state === 'unreachable' || state === 'signed-out') return false;
    if (state !== 'failed') this.settle(record.key, state);
    // What comes after a failed one may rest on it: it is tried again first, until it steps out of the line.
    return state !== 'failed' || record.failures + 1 >= MOST_FAILURES;
  }

  private async write(record: OutboxRecord, answer: Delivered): Promise<void> {
    const { store } = this.world;
    const { message } = answer;
    switch (answer.state) {
      case 'done':
        this.done = [{ ...this.shown(record), ...answer, state: 'done' }, ...this.done];
        return store.remove(record.key);
      case 'refused':
        return store.update({ ...record, state: 'refused', message, details: answer.details });
      case 'conflict':
        return store.update({ ...record, state: 'conflict', message, conflict: answer.conflict });
      case 'failed':
        return store.update({ ...record, message, failures: record.failures + 1 });
      default:
        return store.update({ ...record, message });
    }
  }

  private settle(key: string, state: SendState): void {
    this.waiting.get(key)?.(state);
    this.waiting.delete(key);
  }

  private async changed(): Promise<void> {
    this.world.announce();
    await this.refresh();
  }

  private shown(record: OutboxRecord): Send {
    const { key, title, input, message, details, conflict, failures } = record;
    const state = this.sending === key ? 'sending' : record.state;
    const held = this.held.has(key) || failures >= MOST_FAILURES;
    return {
      key,
      change: record.change as ChangeName,
      title,
      input,
      state,
      message,
      details,
      conflict,
      held,
    };
  }
}
