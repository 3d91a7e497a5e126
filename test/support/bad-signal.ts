import { randomUUID } from 'node:crypto';
import { openDevice } from '../../board/device/device-database.js';
import { type Delivered, Outbox } from '../../board/sends/outbox/outbox.js';
import type { OutboxRecord } from '../../board/sends/outbox/outbox-record.js';
import { deviceStore, type OutboxStore } from '../../board/sends/outbox/outbox-store.js';

/*
 * A phone with a bad signal: requests are lost, come twice, come late and out of turn, answers are lost after the
 * change was committed, and the page is killed while a request is under way. What happens follows from the numbers that
 * are handed in.
 */

const LOST: Delivered = { state: 'unreachable', message: 'No signal.' };
const never = <T>(): Promise<T> => new Promise<T>(() => undefined);

/** One page of the phone; once killed, nothing that it has begun goes on. */
interface PhonePage {
  readonly outbox: Outbox;
  readonly killed: Promise<void>;
}

/** How often each kind of trouble came. */
export type Troubles = Record<'lost' | 'answerLost' | 'twice' | 'late' | 'killed', number>;

export class BadSignal {
  readonly troubles: Troubles = { lost: 0, answerLost: 0, twice: 0, late: 0, killed: 0 };
  private readonly device = randomUUID();
  private late: OutboxRecord[] = [];
  private page: Promise<PhonePage> | null = null;
  private calm = false;

  constructor(
    private readonly personId: string,
    private readonly request: (record: OutboxRecord) => Promise<Delivered>,
    private readonly chance: () => number,
  ) {}

  /** A person presses: kept and sent as far as the signal lets it; after a kill the page is opened again. */
  async press(change: string, title: string, input: Readonly<Record<string, unknown>>): Promise<void> {
    const { outbox, killed } = await this.current();
    await Promise.race([outbox.send({ personId: this.personId, change, title, input }), killed]);
    if (this.late.length > 0 && this.chance() < 0.2) await this.deliverLate();
  }

  /** The signal is good again: everything is sent, and every late copy comes in. */
  async allSent(): Promise<Outbox> {
    this.calm = true;
    const { outbox } = await this.current();
    await outbox.drain();
    while (this.late.length > 0) await this.deliverLate();
    this.calm = false;
    return outbox;
  }

  private async deliverLate(): Promise<void> {
    const [record] = this.late.splice(Math.floor(this.chance() * this.late.length), 1);
    if (record) await this.request(record);
  }

  private current(): Promise<PhonePage> {
    return (this.page ??= this.open());
  }

  private async open(): Promise<PhonePage> {
    let alive = true;
    let kill: () => void = () => undefined;
    const killed = new Promise<void>((resolve) => (kill = resolve));
    let line = Promise.resolve();
    const outbox = new Outbox({
      store: mortal(
        deviceStore(() => openDevice(this.device), this.personId),
        () => alive,
      ),
      deliver: (record) =>
        this.deliver(record, () => {
          alive = false;
          this.page = null;
          kill();
        }),
      alone: (work) => (line = line.then(work)),
      announce: () => undefined,
      newKey: randomUUID,
      ofTheSite: () => true,
    });
    await outbox.open();
    return { outbox, killed };
  }

  private async deliver(record: OutboxRecord, kill: () => void): Promise<Delivered> {
    if (this.calm) return this.request(record);
    const luck = this.chance();
    if (luck < 0.12) return this.trouble('lost', LOST);
    if (luck < 0.27) {
      await this.request(record);
      return this.trouble('answerLost', LOST);
    }
    if (luck < 0.37) {
      const [first] = await Promise.all([this.request(record), this.request(record)]);
      return this.trouble('twice', first);
    }
    if (luck < 0.47) {
      this.late.push(record);
      return this.trouble('late', luck < 0.42 ? LOST : await this.request(record));
    }
    if (luck < 0.53) {
      if (luck < 0.5) await this.request(record);
      this.trouble('killed', LOST);
      kill();
      return never();
    }
    return this.request(record);
  }

  private trouble(kind: keyof Troubles, answer: Delivered): Delivered {
    this.troubles[kind] += 1;
    return answer;
  }
}

/** A store whose page may die: from then on nothing comes back from it. */
function mortal(store: OutboxStore, alive: () => boolean): OutboxStore {
  const guard = <T>(work: () => Promise<T>): Promise<T> => (alive() ? work() : never<T>());
  return {
    add: (record, bytes) => guard(() => store.add(record, bytes)),
    all: () => guard(() => store.all()),
    bytesOf: (key) => guard(() => store.bytesOf(key)),
    update: (record) => guard(() => store.update(record)),
    remove: (key) => guard(() => store.remove(key)),
  };
}
